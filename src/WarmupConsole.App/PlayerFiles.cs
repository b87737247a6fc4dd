namespace WarmupConsole.App;

/// <summary>The files that a player keeps beside playing; null for those not wanted.</summary>
/// <param name="Recording">A Standard MIDI File.</param>
/// <param name="Trace">Each message with its time, for measuring.</param>
internal sealed record PlayerFiles(string? Recording, string? Trace)
{
    /// <summary>Where A4 lies for sound of our own and for devices that can be told; null as usual.</summary>
    internal double? A4Hertz { get; init; }

    internal static PlayerFiles None { get; } = new(null, null);

    /// <summary>For a player that takes the place of another: its files stand beside those and overwrite nothing.</summary>
    /// <param name="startedBefore">How many players were started before it.</param>
    internal PlayerFiles After(int startedBefore) =>
        startedBefore == 0 ? this : this with { Recording = Numbered(Recording, startedBefore + 1), Trace = Numbered(Trace, startedBefore + 1) };

    private static string? Numbered(string? path, int number) => path is null
        ? null
        : Path.Combine(Path.GetDirectoryName(path) ?? "", $"{Path.GetFileNameWithoutExtension(path)}-{number}{Path.GetExtension(path)}");
}
