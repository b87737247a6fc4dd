using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Planning;

/// <summary>The one formula for planning, timers and playing: a rung lasts its beats plus the breath, at its tempo.</summary>
public static class StepTiming
{
    /// <summary>Beats for which the tonic chord sounds at the start of a step, after a hold, and after a change of tempo between rungs.</summary>
    public static Beats Cue { get; } = Beats.FromBeats(2);

    /// <summary>Beats of count-in after that cue.</summary>
    public static Beats CountIn { get; } = Beats.FromBeats(2);

    /// <summary>One rung with the breath after it.</summary>
    public static Beats RungBeats(Exercise exercise, int breathBeats) =>
        (exercise.Pattern?.Length ?? Beats.Zero) + Beats.FromBeats(breathBeats);

    /// <summary>One round of a body or breathing exercise.</summary>
    public static Beats RoundBeats(Exercise exercise) => Beats.FromBeats(exercise.Phases.Sum(phase => phase.Counts));

    /// <summary>What is done in a step: cue and count-in once, and its rungs; or its rounds.</summary>
    public static Beats WorkBeats(Exercise exercise, int rungs, int rounds, int breathBeats) => exercise.IsSung
        ? Cue + CountIn + (RungBeats(exercise, breathBeats) * rungs)
        : RoundBeats(exercise) * rounds;

    /// <summary>A whole step: its talk, then its work at its tempo.</summary>
    public static TimeSpan Step(Tempo tempo, int talkSeconds, Beats work) => TimeSpan.FromSeconds(talkSeconds) + tempo.DurationOf(work);
}
