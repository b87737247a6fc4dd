using WarmupConsole.Midi.Listening;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Sound;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Running;

/// <summary>Which port is wanted: by option, else by this machine's settings, else the first instrument.</summary>
internal static class Ports
{
    private const string Nowhere = "none";

    internal static PortChoice Choose(Composition composition, string? asked)
    {
        string? name = asked ?? composition.Settings.ReadSettings().Value?.Port;
        return name switch
        {
            null or "" => PortChoice.First,
            Nowhere => PortChoice.None,
            _ => PortChoice.Named(name),
        };
    }

    /// <summary>Which input is listened to: by this machine's settings, else the one that belongs to the port; beside the loudspeaker the first instrument.</summary>
    internal static PortChoice Listening(Composition composition, string? asked) =>
        composition.Settings.ReadSettings().Value?.Input is { } input ? PortChoice.Named(input)
        : Choose(composition, asked) is var port && BuiltInSound.IsWished(port) ? PortChoice.First
        : port;

    /// <summary>What would be listened to, of the inputs there are, and why.</summary>
    internal static InputOutlook Inputs(Composition composition, string? asked, PortListing listing) => new(
        listing,
        Listening(composition, asked),
        composition.Settings.ReadSettings().Value?.Input is null ? AppTexts.InputOfPort : AppTexts.InputFromSettings(composition.Settings.SettingsPath));

    /// <summary>What is wrong with this machine's settings; with any of it the first instrument is played on, and nothing is overwritten.</summary>
    internal static IReadOnlyList<FileProblem> Faults(Composition composition) => composition.Settings.ReadSettings().Problems;

    /// <summary>Keeps the choice for this machine; an empty name forgets it. Null, or why it could not be kept.</summary>
    internal static string? Remember(Composition composition, string name) => Faults(composition) is [_, ..] faults
        ? string.Join(Environment.NewLine, faults)
        : composition.Settings.WriteSettings(composition.Settings.ReadSettings().Value! with { Port = name.Length == 0 ? null : PortNames.WithoutNumbers(name) }) is { } trouble
            ? AppTexts.NotSaved(composition.Settings.SettingsPath, trouble)
            : null;
}
