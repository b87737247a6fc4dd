namespace WarmupConsole.Sessions.Findings;

/// <summary>What rungs can differ in.</summary>
public enum Aspect
{
    /// <summary>The vowel on the pitch.</summary>
    Vowel,

    /// <summary>The loudness word at the pitch.</summary>
    Loudness,

    /// <summary>How long the note is: short, middling, long.</summary>
    Length,

    /// <summary>Where the pitch lies in the part's range.</summary>
    Place,

    /// <summary>When in the warm-up: first, second or last third of its usual minutes.</summary>
    Minute,
}
