namespace WarmupConsole.Midi.Ports;

/// <summary>What a look at the names showed: the device open is gone, or the one wished for is there.</summary>
public sealed record PortSight(PortWatch Of, bool IsThere);
