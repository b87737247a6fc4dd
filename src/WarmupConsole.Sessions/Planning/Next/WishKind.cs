namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>What a wish comes from, in the order in which the reasons of a step are told.</summary>
internal enum WishKind
{
    Finding,

    /// <summary>The vowel, the loudness or the half-closed sound on which a finding is best worked on.</summary>
    Circumstance,
    Heard,
    Asked,
    Purpose,
    Range,
    Habit,
}
