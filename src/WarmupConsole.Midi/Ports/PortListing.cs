namespace WarmupConsole.Midi.Ports;

/// <summary>The ports of the machine; with none, <paramref name="Trouble"/> says why and what to do.</summary>
public sealed record PortListing(IReadOnlyList<string> Names, string? Trouble);
