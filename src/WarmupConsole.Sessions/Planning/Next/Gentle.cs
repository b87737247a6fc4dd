using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Exercises that ask little of a voice: soft ones, and half-closed sounds, which carry it (common practice).</summary>
internal static class Gentle
{
    private static readonly int Softly = DynamicsData.Order("mp");
    private static readonly int NotLoud = DynamicsData.Order("mf");

    internal static bool Is(Exercise exercise) => IsSoft(exercise) || (IsHalfClosed(exercise) && Loudest(exercise) <= NotLoud);

    internal static bool IsSoft(Exercise exercise) => Loudest(exercise) <= Softly;

    /// <summary>A hum, a lip trill, a rolled r or another half-closed sound from the first note to the last, in every line.</summary>
    internal static bool IsHalfClosed(Exercise exercise) =>
        exercise.IsSung && SungLine.AllOf(exercise).All(line => line.Notes.Count > 0 && line.Notes.All(note => VowelData.IsHalfClosed(note.Vowel)));

    /// <summary>True when the ladder goes down, or each of its keys begins on its highest note.</summary>
    internal static bool ComesFromAbove(WarmupStep step) => step.Plan.Keys.Shape == LadderShape.Down
        || SungLine.AllOf(step.Exercise).All(line => line.Notes.Count > 0 && line.Notes[0].Interval.Semitones == line.Notes.Max(note => note.Interval.Semitones));

    /// <summary>What it is sung on: "on a hum", "on a lip trill"; empty for an open sound.</summary>
    internal static string Sound(Exercise exercise) => !IsHalfClosed(exercise) ? "" : SungLine.AllOf(exercise)[0].Notes[0].Vowel[0] switch
    {
        'm' or 'n' or 'ŋ' or 'ɲ' => "on a hum",
        'ʙ' => "on a lip trill",
        'r' => "on a rolled r",
        _ => "on a half-closed sound",
    };

    private static int Loudest(Exercise exercise) => exercise.Dynamics.Max(DynamicsData.Order);
}
