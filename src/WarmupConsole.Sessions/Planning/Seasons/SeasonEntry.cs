namespace WarmupConsole.Sessions.Planning.Seasons;

/// <summary>A day in the calendar of a season.</summary>
/// <param name="Date">The day.</param>
/// <param name="Kind">What is on it.</param>
/// <param name="IsPast">True before today.</param>
/// <param name="Title">Of the plan or the concert; may be empty.</param>
public sealed record SeasonEntry(DateOnly Date, SeasonEntryKind Kind, bool IsPast, string Title)
{
    /// <summary>How far and how difficult a warm-up of that day may be.</summary>
    public required SeasonTarget Target { get; init; }

    /// <summary>Minutes that were led or are planned, or null.</summary>
    public int? Minutes { get; init; }
}
