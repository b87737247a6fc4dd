namespace WarmupConsole.Sessions.Events;

/// <summary>A pin was put in words. Where and when it was pinned stands in its <see cref="MarkMade"/>; the fields mean what they mean there.</summary>
public sealed record MarkWorded(
    int Id,
    string Raw,
    IReadOnlyList<string> Parts,
    string? Kind,
    string? Key,
    bool KeyNamed,
    int? Pitch,
    string Place,
    string Strength = "") : SessionEvent;
