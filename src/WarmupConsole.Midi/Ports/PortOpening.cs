namespace WarmupConsole.Midi.Ports;

/// <summary>What came of opening a port: always a port to send to, and a sentence for the director.</summary>
/// <param name="Port">The port wanted, or one that swallows everything when it could not be opened.</param>
/// <param name="AsWanted">False when the wish could not be met.</param>
/// <param name="Sentence">What sounds now; when nothing does, why and what to do.</param>
public sealed record PortOpening(IMidiPort Port, bool AsWanted, string Sentence)
{
    /// <summary>What is to be watched, since it may vanish or appear; null when nothing is.</summary>
    public PortWatch? Watch { get; init; }
}
