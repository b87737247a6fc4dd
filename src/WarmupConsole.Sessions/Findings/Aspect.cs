namespace WarmupConsole.Sessions.Findings;

/// <summary>What rungs can differ in.</summary>
public enum Aspect
{
    /// <summary>The sounding pitch.</summary>
    Pitch,

    /// <summary>The vowel on the pitch.</summary>
    Vowel,

    /// <summary>The loudness word at the pitch.</summary>
    Loudness,

    /// <summary>How long its note sounds: short, middling, long; so also how quick the singing is.</summary>
    Length,

    /// <summary>Where the pitch lies in the part's comfortable range: below, low, middle, high, above.</summary>
    Place,

    /// <summary>When in the warm-up: first, second or last third of the minutes of the longest one.</summary>
    Minute,
}
