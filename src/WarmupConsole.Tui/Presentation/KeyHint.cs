using WarmupConsole.Tui.Keys;

namespace WarmupConsole.Tui.Presentation;

/// <summary>A key of the table as it stands now: why it would do nothing, or null when it works.</summary>
public sealed record KeyHint(KeyRow Row, string? WhyNot);
