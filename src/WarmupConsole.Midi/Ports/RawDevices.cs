namespace WarmupConsole.Midi.Ports;

/// <summary>The kernel's MIDI device files on Linux: what is left when no library is installed.</summary>
/// <param name="folder">Where the device files are.</param>
/// <param name="cards">Where the kernel names its cards.</param>
public sealed class RawDevices(string folder = "/dev/snd", string cards = "/proc/asound")
{
    private const string Prefix = "midiC";
    private const int NoSuchDevice = 19;
    private const int NoReader = 6;
    private const int NotThere = 2;

    /// <summary>A port named by a path is a device file, whatever else there is.</summary>
    public static bool IsPath(PortChoice choice) => choice.Kind == PortChoiceKind.Named && choice.Name.StartsWith('/') && OperatingSystem.IsLinux();

    public IReadOnlyList<string> Names() => Directory.Exists(folder)
        ? [.. Directory.EnumerateFiles(folder, Prefix + "*").Order(StringComparer.Ordinal).Select(Describe)]
        : [];

    public PortOpening Open(PortChoice choice)
    {
        if (IsPath(choice))
        {
            return Open(choice, choice.Name, choice.Name);
        }

        IReadOnlyList<string> names = Names();
        return PortNames.Find(names, choice) is >= 0 and int index
            ? Open(choice, PathIn(names[index]), names[index])
            : new(new NullPort(), choice.Kind != PortChoiceKind.Named, names.Count == 0 ? PortTexts.NoLibrary : PortTexts.NotFound(choice.Name, names));
    }

    private static PortOpening Open(PortChoice choice, string path, string name) => RawPort.Open(path, out int error) is { } port
        ? new(port, true, PortTexts.Playing(name)) { Watch = new(choice, name) }
        : new(new NullPort(), false, error is NotThere or NoReader or NoSuchDevice ? PortTexts.NoDevice(path) : PortTexts.NotOpened(path));

    internal static string PathIn(string name) => name[(name.LastIndexOf('(') + 1)..^1];

    // A card that is pulled out while it is read has no name any more.
    private static string? ReadName(string file)
    {
        try
        {
            return File.Exists(file) ? File.ReadAllText(file).Trim() : null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    // "midiC1D0" is device 0 of card 1.
    private string Describe(string path)
    {
        string card = Path.GetFileName(path)[Prefix.Length..].Split('D')[0];
        string named = Path.Combine(cards, $"card{card}", "id");
        return $"{ReadName(named) ?? $"Card {card}"} ({path})";
    }
}
