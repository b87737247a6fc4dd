namespace WarmupConsole.Sessions.Planning.Choosing;

/// <summary>How an exercise begins, for the rule that no open vowel is the first one sung.</summary>
public enum FirstVowel
{
    /// <summary>Hums, trills, breath: there is none.</summary>
    None,

    /// <summary>Closed enough to be the first one of a warm-up, in every line.</summary>
    Closed,

    /// <summary>Open in some line.</summary>
    Open,
}
