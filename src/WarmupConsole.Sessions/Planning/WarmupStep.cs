using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Planning;

/// <summary>A step made ready: exercise found, tempo settled, ladder built for the choir.</summary>
/// <param name="Plan">What the plan says.</param>
/// <param name="Exercise">The exercise.</param>
/// <param name="Tempo">The tempo it starts at.</param>
/// <param name="Ladder">The keys; without rungs for body and breathing.</param>
/// <param name="TalkSeconds">Seconds of talk before it.</param>
/// <param name="Rounds">Rounds of the phases; 0 for sung steps.</param>
/// <param name="Planned">Talk, lead-in and all rungs (or rounds), by the formula of <see cref="StepTiming"/>.</param>
public sealed record WarmupStep(
    PlanStep Plan,
    Exercise Exercise,
    Tempo Tempo,
    KeyLadder Ladder,
    int TalkSeconds,
    int Rounds,
    TimeSpan Planned)
{
    /// <summary>The tempo of each key.</summary>
    public KeyTempos Tempos => new(Tempo, Plan.LastTempo ?? Tempo, Ladder.Rungs.Count);

    /// <summary>What it takes with so many keys in its ladder. A step in which no key fits is passed over while it runs, and takes no time.</summary>
    public TimeSpan Lasts(int keys) => Exercise.IsSung && keys == 0
        ? TimeSpan.Zero
        : StepTiming.Step(Tempo, TalkSeconds, StepTiming.WorkBeats(Exercise, keys, Rounds, Plan.BreathBeats)) + Beyond(Tempo, 0, keys);

    /// <summary>How much longer (or, where it is negative, shorter) the keys after one take than they would at its tempo.</summary>
    /// <param name="present">The tempo of the present key.</param>
    /// <param name="key">The present key, from 0.</param>
    /// <param name="keys">How many keys there are now.</param>
    public TimeSpan Beyond(Tempo present, int key, int keys)
    {
        KeyTempos tempos = Tempos;
        TimeSpan beyond = TimeSpan.Zero;
        for (int later = key + 1; later < keys && tempos.First != tempos.Last; later++)
        {
            // A key with the breath before it; the formula has one breath more, after the last.
            Beats beats = StepTiming.RungBeats(Exercise, Plan.BreathBeats + (later == keys - 1 ? Plan.BreathBeats : 0));
            beyond += tempos.Moved(present, key, later).DurationOf(beats) - present.DurationOf(beats);
        }

        return beyond;
    }
}
