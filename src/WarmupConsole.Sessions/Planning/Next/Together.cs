using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Exercises that several parts sing together: a canon or a chord is none when only one part sings.</summary>
internal static class Together
{
    private static readonly Purpose[] Ensemble = [Purpose.Canon, Purpose.Chords, Purpose.Drone];

    internal static bool IsNeededFor(Exercise exercise) => exercise.Voices.Count > 0 || exercise.Purposes.Any(Ensemble.Contains);

    /// <summary>True when nobody whom the exercise needs rests in any key.</summary>
    internal static bool IsKeptIn(WarmupStep step) =>
        !IsNeededFor(step.Exercise) || step.Ladder.Rungs.All(rung => rung.Parts.All(part => part.Sings));
}
