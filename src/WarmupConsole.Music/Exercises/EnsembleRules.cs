using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Exercises;

/// <summary>What an exercise offers to several parts: in lines of their own, or in one line that serves for it.</summary>
internal static class EnsembleRules
{
    private const int ChordTones = 3;
    private const int Octave = 12;

    private static readonly Beats Long = Beats.FromBeats(2);

    /// <summary>Three tones at once, or in one line three long ones after each other, for parts that stay behind on them.</summary>
    internal static bool BuildsChords(PurposeFacts facts) => facts.Lines.Any(HoldsTones) || Starts(facts).Any(at => TonesAt(facts, at) >= ChordTones);

    /// <summary>Two lines with the same moves at different times; or one chord throughout, and rest at the end for those who follow.</summary>
    internal static bool IsCanon(PurposeFacts facts) =>
        (HasOneChord(facts) && facts.Lines.Any(line => line.Length - line.Notes[^1].End >= Long))
        || facts.Lines.Skip(1).Any(line => line.Notes[0].Start > facts.Lines[0].Notes[0].Start && line.Moves.SequenceEqual(facts.Lines[0].Moves));

    /// <summary>A line on one pitch under another that moves; or one chord throughout.</summary>
    internal static bool HasDrone(PurposeFacts facts) =>
        HasOneChord(facts) || (facts.Lines.Any(line => line.PitchCount == 1) && facts.Lines.Any(line => line.PitchCount > 1));

    private static bool HoldsTones(SungLine line) =>
        line.Notes.Where(note => note.Length >= Long).Select(note => note.Interval.Semitones).Distinct().Count() >= ChordTones;

    private static bool HasOneChord(PurposeFacts facts) => facts.Exercise.Harmony.Select(chord => chord.Numeral).Distinct().Count() == 1;

    private static IEnumerable<Beats> Starts(PurposeFacts facts) => facts.Lines.SelectMany(line => line.Notes).Select(note => note.Start).Distinct();

    /// <summary>Octaves count once: a part's placement may move a line by them.</summary>
    private static int TonesAt(PurposeFacts facts, Beats at) => facts.Lines
        .SelectMany(line => line.Notes.Where(note => note.Start <= at && at < note.End))
        .Select(note => ((note.Interval.Semitones % Octave) + Octave) % Octave)
        .Distinct().Count();
}
