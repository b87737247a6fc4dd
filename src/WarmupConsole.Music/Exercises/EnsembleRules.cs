using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Exercises;

/// <summary>What a line offers to several parts.</summary>
internal static class EnsembleRules
{
    private const int ChordTones = 3;

    private static readonly Beats Long = Beats.FromBeats(2);

    internal static bool BuildsChords(PurposeFacts facts) => facts.Lines.Any(line =>
        line.Notes.Where(note => note.Length >= Long).Select(note => note.Interval.Semitones).Distinct().Count() >= ChordTones);

    internal static bool IsCanon(PurposeFacts facts) => HasDrone(facts) && facts.Lines.Any(line => line.Length - line.Notes[^1].End >= Long);

    /// <summary>One chord lies under the whole of it.</summary>
    internal static bool HasDrone(PurposeFacts facts) => facts.Exercise.Harmony.Select(chord => chord.Numeral).Distinct().Count() == 1;
}
