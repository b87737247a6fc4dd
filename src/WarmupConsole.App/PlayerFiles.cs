namespace WarmupConsole.App;

/// <summary>The files that a player keeps beside playing; null for those not wanted.</summary>
/// <param name="Recording">A Standard MIDI File.</param>
/// <param name="Trace">Each message with its time, for measuring.</param>
internal sealed record PlayerFiles(string? Recording, string? Trace)
{
    internal static PlayerFiles None { get; } = new(null, null);
}
