using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Sessions.Live;

/// <summary>What the piano plays for a session.</summary>
internal static class LiveMusic
{
    /// <summary>The tonic chord of the present rung, from beat 0 of its cue.</summary>
    public static IReadOnlyList<ScoreNote> Tonic(LiveSession session) =>
        TonicOf(session, session.Rung!);

    /// <summary>The tonic chord of any rung of the present step.</summary>
    public static IReadOnlyList<ScoreNote> TonicOf(LiveSession session, Rung rung) => CueChords.Tonic(rung, session.Step!.Exercise, StepTiming.Cue);

    /// <summary>What is tapped between cue chord and first note, from beat 0 of the count-in.</summary>
    public static IReadOnlyList<ScoreNote> CountIn(LiveSession session) => session.Piano.Click == Click.None ? [] : Clicks.On(StepTiming.CountIn);

    /// <summary>The cue chords that lead from the present rung to the next, from beat 0 of the breath.</summary>
    public static IReadOnlyList<ScoreNote> ToNextKey(LiveSession session) => CueChords.ToNextKey(
        (session.Rung!, session.NextRung!),
        session.Step!.Exercise,
        Beats.FromBeats(session.Step.Plan.BreathBeats),
        session.Piano);

    /// <summary>The exercise in the key of a rung, from its first beat.</summary>
    public static IReadOnlyList<ScoreNote> Rung(LiveSession session, Rung rung) => Accompaniment.For(session.Step!.Exercise, rung, session.Piano);
}
