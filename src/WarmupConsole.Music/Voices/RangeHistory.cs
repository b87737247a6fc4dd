namespace WarmupConsole.Music.Voices;

/// <summary>Which of a part's range entries counts.</summary>
internal static class RangeHistory
{
    /// <summary>
    /// The newest entry that is not after the day, of equal days the later in the list. When all are after it, the oldest: a
    /// range measured later says more than none. Null without entries.
    /// </summary>
    internal static RangeEntry? On(IReadOnlyList<RangeEntry> history, DateOnly day) =>
        history.Where(entry => entry.From is null || entry.From <= day).Reverse().MaxBy(From) ?? history.MinBy(From);

    private static DateOnly From(RangeEntry entry) => entry.From ?? DateOnly.MinValue;
}
