namespace WarmupConsole.Sessions.Planning.Seasons;

/// <summary>What a day of the season is.</summary>
public enum SeasonEntryKind
{
    /// <summary>A warm-up that was led, as its log says.</summary>
    Led,

    /// <summary>A warm-up with a plan, not led yet, or never.</summary>
    Planned,

    /// <summary>The usual day of the week, with no plan yet.</summary>
    Open,

    /// <summary>A rehearsal without warm-up, as a plan says.</summary>
    Bare,

    /// <summary>A rehearsal that could go without one; the director decides.</summary>
    BareProposed,
    Concert,
}
