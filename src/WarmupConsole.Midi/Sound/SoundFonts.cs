namespace WarmupConsole.Midi.Sound;

/// <summary>Where systems keep SoundFonts; none comes with this program.</summary>
internal static class SoundFonts
{
    private const string Variable = "WARMUP_SOUNDFONT";
    private static readonly string[] Folders = ["/usr/share/sounds/sf2", "/usr/share/sounds/sf3", "/usr/share/soundfonts", "/usr/local/share/soundfonts", "/opt/homebrew/share/soundfonts"];
    private static readonly string[] Usual = ["default-GM.sf2", "default-GM.sf3", "default.sf2", "FluidR3_GM.sf2", "TimGM6mb.sf2"];

    /// <summary>The one that the environment names, else the system's usual one, else any; null without one.</summary>
    internal static string? Find() => Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } named
        ? File.Exists(named) ? named : null
        : Folders.SelectMany(folder => Usual.Select(name => Path.Combine(folder, name))).FirstOrDefault(File.Exists)
            ?? Folders.Where(Directory.Exists).SelectMany(Directory.EnumerateFiles).Where(IsSoundFont).Order(StringComparer.Ordinal).FirstOrDefault();

    private static bool IsSoundFont(string path) => Path.GetExtension(path) is ".sf2" or ".sf3";
}
