using System.Globalization;
using System.Text;
using WarmupConsole.Sessions.Hands;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Folders;

/// <summary>The user's settings folder on this machine: settings, diagnostics, and what demo runs leave behind.</summary>
public sealed class SettingsFolder(string root)
{
    private const string ProgramFolder = "warmup-console";

    /// <summary>What settings.yaml may hold.</summary>
    public static FieldTable Fields { get; } = new(
        "settings.yaml",
        Field.Format,
        Field.Text("port", "Part of the name of the MIDI port to play on; none plays nowhere, built-in on the loudspeaker."),
        Field.Number("a4", new(415, 466, "Hz"), "Where A4 lies; 440 is usual."),
        Field.Text("input", "Part of the name of the MIDI input to listen to, where it is another one than the port."),
        Field.Map("pedals", PedalsReader.Fields, "What pedals, keys and controllers do while a warm-up runs."));

    public string Root { get; } = root;

    public string SettingsPath => Path.Combine(Root, "settings.yaml");

    public string DiagnosticsPath => Path.Combine(Root, "diagnostics.log");

    /// <summary>APPDATA on Windows; elsewhere XDG_CONFIG_HOME if absolute, else .config in HOME. Without any of them, the temporary folder.</summary>
    /// <param name="environment">Gives the value of an environment variable, or null.</param>
    /// <param name="isWindows">Which rule holds.</param>
    public static SettingsFolder Locate(Func<string, string?> environment, bool isWindows)
    {
        string? home = isWindows ? environment("APPDATA") : Absolute(environment("XDG_CONFIG_HOME")) ?? Below(environment("HOME"), ".config");
        return new(Path.Combine(string.IsNullOrEmpty(home) ? Path.GetTempPath() : home, ProgramFolder));
    }

    /// <summary>Where a demo choir's plans and sessions are written, so that its own folder stays as it is.</summary>
    public string DemoFolder(string choirFolder) =>
        Path.Combine(Root, "demo", Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(choirFolder))));

    /// <summary>The settings; as usual when there is no file yet.</summary>
    public FileRead<MachineSettings> ReadSettings()
    {
        if (!File.Exists(SettingsPath))
        {
            return new(new(Port: null), []);
        }

        FileRead<byte[]> bytes = BoundedFile.Read(SettingsPath, Utf8Text.MostBytes);
        return bytes.IsGood ? Parse(SettingsPath, bytes.Value) : new(null, bytes.Problems);
    }

    /// <summary>Reads what a settings file holds.</summary>
    public static FileRead<MachineSettings> Parse(string file, ReadOnlySpan<byte> bytes)
    {
        FileRead<MapReader> opened = FormatCheck.Open(file, bytes, Fields);
        if (!opened.IsGood)
        {
            return new(null, opened.Problems);
        }

        string port = opened.Value.Text("port");
        decimal? a4 = opened.Value.Number("a4");
        string input = opened.Value.Text("input");
        Pedals pedals = opened.Value.Map("pedals") is { } fields ? PedalsReader.Read(fields) : Pedals.None;
        opened.Value.Finish();
        return opened.Value.Problems.Finish(new MachineSettings(port.Length == 0 ? null : port) { A4Hertz = (double?)a4, Input = input.Length == 0 ? null : input, Pedals = pedals });
    }

    /// <summary>The settings as a file that reads back as the same.</summary>
    public static string Write(MachineSettings settings)
    {
        IEnumerable<string> pedals = settings.Pedals.Bound.OrderBy(row => row.Key).Select(row => $"  {PedalUseData.Id(row.Key)}: {row.Value}\n");
        return "format: 1\n" + Line("port", settings.Port) + A4(settings.A4Hertz) + Line("input", settings.Input) + (settings.Pedals.Bound.Count == 0 ? "" : "pedals:\n" + string.Concat(pedals));
    }

    /// <summary>Keeps the settings in place of the former ones; null, or why it could not.</summary>
    public string? WriteSettings(MachineSettings settings) => Try(() =>
    {
        string draft = SettingsPath + ".new";
        File.WriteAllBytes(draft, Encoding.UTF8.GetBytes(Write(settings)));
        File.Move(draft, SettingsPath, overwrite: true);
    });

    /// <summary>True once the tour was seen on this machine.</summary>
    public bool IsTourSeen => File.Exists(TourPath);

    /// <summary>Notes that the tour was seen; null, or why that could not be kept.</summary>
    public string? KeepTourSeen() => Try(() => File.WriteAllText(TourPath, "The tour was seen; without this file it is given again.\n"));

    private string TourPath => Path.Combine(Root, "tour-seen");

    /// <summary>Adds a line to the diagnostics; null, or why it could not.</summary>
    public string? AddDiagnostics(DateTimeOffset at, string line) =>
        Try(() => File.AppendAllText(DiagnosticsPath, $"{at:O} {Printable.Line(line)}\n"));

    private static string A4(double? hertz) => hertz is { } given ? string.Create(CultureInfo.InvariantCulture, $"a4: {given}\n") : "";

    private static string Line(string name, string? value) => value is null ? "" : $"{name}: {YamlLine.Quote(value)}\n";

    private string? Try(Action write)
    {
        try
        {
            Directory.CreateDirectory(Root);
            write();
            return null;
        }
        catch (Exception fault) when (FileFault.IsExpected(fault))
        {
            return StorageTexts.Unwritable(FileFault.Reason(fault));
        }
    }

    private static string? Absolute(string? path) => Path.IsPathRooted(path) ? path : null;

    private static string? Below(string? folder, string name) => string.IsNullOrEmpty(folder) ? null : Path.Combine(folder, name);
}
