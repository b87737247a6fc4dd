namespace WarmupConsole.Music.Repertoire.Places;

/// <summary>One row per reason: its words, and what its amount counts. (The limits behind them are ours, from common practice.)</summary>
public static class HardReasonData
{
    private static readonly (HardReason Reason, string Words, string Unit)[] Rows =
    [
        (HardReason.AboveComfortable, "above comfortable", "s"),
        (HardReason.BelowComfortable, "below comfortable", "s"),
        (HardReason.HighAndLong, "high and long", "s"),
        (HardReason.HighAndSoft, "high and soft", "s"),
        (HardReason.LargeLeap, "large leap", "semitones"),
        (HardReason.DissonantLeap, "dissonant leap", "semitones"),
        (HardReason.LeapIntoExtreme, "leap into an extreme", "semitones"),
        (HardReason.LongPhrase, "long phrase without a breath", "s"),
        (HardReason.QuickNotes, "quick notes", "notes a second"),
        (HardReason.ChromaticRun, "chromatic run", "half-steps"),
        (HardReason.ExposedEntry, "exposed entry", ""),
        (HardReason.ClosedVowelHigh, "closed vowel on a high note", "s"),
        (HardReason.WeakPitch, "near a weak pitch", "s"),
    ];

    /// <summary>As a director reads it: "high and long".</summary>
    public static string Words(HardReason reason) => Rows[(int)reason].Words;

    /// <summary>What its amount counts: "s", "semitones"; empty when it has none.</summary>
    public static string Unit(HardReason reason) => Rows[(int)reason].Unit;
}
