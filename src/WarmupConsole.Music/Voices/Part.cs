namespace WarmupConsole.Music.Voices;

/// <summary>One part of the choir: a voice, a half of a divided voice, or any named group that sings one line.</summary>
/// <param name="Id">The canonical id in files and logs: lower-case, such as "alto".</param>
/// <param name="Name">As it is shown: "Alto".</param>
/// <param name="Letters">What may be typed for it in the mark line, besides id and name: "a", "altos".</param>
/// <param name="Groups">Groups it belongs to, such as "women" or "upper"; "everyone" is always one.</param>
/// <param name="Singers">How many sing it; 0 when not stated.</param>
/// <param name="PlacementOctaves">Octaves between a shared pattern as written and as this part sings it: −1 for men by default, else 0.</param>
/// <param name="Range">Its ranges now.</param>
public sealed record Part(
    string Id,
    string Name,
    IReadOnlyList<string> Letters,
    IReadOnlyList<string> Groups,
    int Singers,
    int PlacementOctaves,
    VoiceRange Range)
{
    /// <summary>Its ranges through time, of which <see cref="Range"/> is one; of two with the same day the later in the list counts. May be empty.</summary>
    public IReadOnlyList<RangeEntry> History { get; init; } = [];

    /// <summary>The entry that counts on a day, or null without a history.</summary>
    public RangeEntry? EntryOn(DateOnly day) => RangeHistory.On(History, day);

    /// <summary>The part with the ranges that count on a day; unchanged without a history.</summary>
    public Part AsOf(DateOnly day) => EntryOn(day) is { } entry ? this with { Range = entry.Range } : this;
}
