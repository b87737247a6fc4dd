namespace WarmupConsole.Music.Repertoire.Places;

/// <summary>Why a place of a score is hard for a part. Words and points are in <see cref="HardReasonData"/>, the measure in docs/repertoire.md.</summary>
public enum HardReason
{
    AboveComfortable,
    BelowComfortable,
    HighAndLong,
    HighAndSoft,
    LargeLeap,
    DissonantLeap,
    LeapIntoExtreme,
    LongPhrase,
    QuickNotes,
    ChromaticRun,
    ExposedEntry,
    ClosedVowelHigh,
    WeakPitch,
}
