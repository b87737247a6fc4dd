namespace WarmupConsole.Midi.Ports;

/// <summary>What a <see cref="PortWatcher"/> looks for.</summary>
/// <param name="Wish">What is opened when it appears.</param>
/// <param name="Device">The full name, with its numbers, of the device that is open; null when none is.</param>
public sealed record PortWatch(PortChoice Wish, string? Device)
{
    /// <summary>True when the loudspeaker played and was lost: it is wanted again, besides what is wished for.</summary>
    public bool LoudspeakerIsLost { get; init; }

    /// <summary>An open device is there while its full name is: other numbers mean that the cable was put in again. A wish needs only the name.</summary>
    public bool IsThere(IReadOnlyList<string> names) => Device is null ? PortNames.Find(names, Wish) >= 0 : names.Contains(Device);

    /// <summary>The same device is wanted again, by its name. What is lost while no device is open can only be the loudspeaker.</summary>
    public PortWatch AfterLoss() => Device is null ? this with { LoudspeakerIsLost = true } : new(PortChoice.Named(PortNames.WithoutNumbers(Device)), null);
}
