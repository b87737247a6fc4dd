using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Exercises;

/// <summary>What can be true of a single line.</summary>
internal static class LineRules
{
    private const double HalfTheChart = 0.5;
    private const int EnoughVowelChanges = 3;
    private const int EnoughReturns = 3;
    private const int EnoughDetached = 3;
    private const int EnoughJoined = 3;
    private const int Third = 4;
    private const int WholeStep = 2;

    private static readonly Beats Short = Beats.FromFraction(1, 2);

    internal static bool Opens(SungLine line)
    {
        double closed = 1;
        foreach (double height in line.Notes.Select(note => VowelData.Height(note.Vowel)).OfType<double>())
        {
            closed = Math.Min(closed, height);
            if (height - closed >= HalfTheChart)
            {
                return true;
            }
        }

        return false;
    }

    internal static bool ChangesVowel(SungLine line) =>
        line.Moves.Index().Count(move => Math.Abs(move.Item.Semitones) <= Third && line.Notes[move.Index].Vowel != line.Notes[move.Index + 1].Vowel) >= EnoughVowelChanges;

    internal static bool Repeats(SungLine line) =>
        line.Moves.Any(move => move.Semitones == 0) || line.Notes.GroupBy(note => note.Interval.Semitones).Any(same => same.Count() >= EnoughReturns);

    internal static bool RunsInSteps(SungLine line)
    {
        Interval[] moves = [.. line.Moves.Where(move => move.Semitones != 0)];
        bool runs = moves.Zip(moves.Skip(1)).Any(pair =>
            IsStep(pair.First) && IsStep(pair.Second) && Math.Sign(pair.First.Semitones) == Math.Sign(pair.Second.Semitones));
        return runs && moves.Count(IsStep) * 2 >= moves.Length;
    }

    internal static bool Leaps(SungLine line, int fromSemitones, int toSemitones) =>
        line.Moves.Any(move => Math.Abs(move.Semitones) >= fromSemitones && Math.Abs(move.Semitones) <= toSemitones);

    internal static bool HasHalfSteps(SungLine line) => line.Moves.Count(IsHalfStep) >= 2 || line.Moves.TakeLast(1).Any(IsHalfStep);

    /// <summary>The last note is left out: almost every line ends on a long one.</summary>
    internal static bool Lengthens(SungLine line)
    {
        long[] lengths = [.. line.Notes.SkipLast(1).Select(note => note.Length.Ticks)];
        int half = lengths.Length / 2;
        return half > 0 && lengths[half..].Average() >= 1.5 * lengths[..half].Average();
    }

    internal static bool IsJoined(SungLine line) =>
        line.Notes.Count >= EnoughJoined && line.LongestPhrase == line.Notes[^1].End - line.Notes[0].Start;

    internal static bool IsDetached(SungLine line) =>
        line.Notes.Zip(line.Notes.Skip(1)).Count(pair => pair.First.Length <= Short && pair.First.End < pair.Second.Start) >= EnoughDetached;

    /// <summary>To the neighbouring degree, however wide (the augmented second of harmonic minor is one), or a whole step by sound.</summary>
    private static bool IsStep(Interval move) => Math.Abs(move.Steps) == 1 || Math.Abs(move.Semitones) <= WholeStep;

    private static bool IsHalfStep(Interval move) => Math.Abs(move.Semitones) == 1;
}
