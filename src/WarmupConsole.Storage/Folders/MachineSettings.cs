using WarmupConsole.Sessions.Hands;

namespace WarmupConsole.Storage.Folders;

/// <summary>What belongs to this machine and not to a choir.</summary>
/// <param name="Port">Name of the MIDI port to play on, or null when none was chosen.</param>
public sealed record MachineSettings(string? Port)
{
    /// <summary>Hertz of A4, or null for 440.</summary>
    public double? A4Hertz { get; init; }

    /// <summary>Name of the MIDI input to listen to, or null for the one of the port.</summary>
    public string? Input { get; init; }

    /// <summary>What pedals, keys and controllers do.</summary>
    public Pedals Pedals { get; init; } = Pedals.None;
}
