using WarmupConsole.Midi.Sound;

namespace WarmupConsole.Midi.Ports;

/// <summary>What the director is told about ports.</summary>
internal static class PortTexts
{
    internal const string NoPort = "no port";
    internal const string Recording = "recording";
    internal const string NothingWanted = "Nothing sounds: playing without a port, as chosen.";
    internal const string NoneFound = "Nothing sounds: no MIDI port found. Connect and switch on the piano: it is taken as soon as it is there; --record FILE keeps what would sound.";

    internal const string NoLoudspeaker = $"Nothing sounds. {SoundTexts.NoLoudspeaker}";

    internal const string NoLibrary =
        "Nothing sounds: the MIDI library RtMidi 5 or later is not installed (Debian, Ubuntu: apt install librtmidi6; macOS: brew install rtmidi; Windows: rtmidi.dll beside the program).";

    internal const string LoopbackRemark = " (leads back into this machine, to no instrument)";
    internal const string FirstFound = "the first instrument found; choose another with --use NAME";

    internal static string WouldUse(string name, string why) => $"A warm-up would play on {name}: {why}.";

    internal static string SameName(string name) => $"Several ports are named {name}: the first is used, and they cannot be told apart. If it is the wrong one, disconnect the other.";

    internal static string Playing(string name) => $"Playing on {name}.";

    internal static string NotFound(string wanted, IReadOnlyList<string> names) => names.Count == 0
        ? $"Nothing sounds: there is no port named '{wanted}', nor any other. Connect and switch on the piano: it is taken as soon as it is there."
        : $"Nothing sounds: no port's name contains '{wanted}'. There are: {string.Join("; ", names)}.";

    internal static string NotOpened(string name) => $"Nothing sounds: the port {name} is there but could not be opened. Another program may hold it: close that.";

    internal static string Lost(string name) => $"The port {name} was lost: check cable and power. The music waits; the port is opened again as soon as it is there.";

    internal static string Back(string name) => $"The port {name} is back. Space goes on.";

    internal static string NoDevice(string path) => $"Nothing sounds: the device file {path} is not there, or nothing is behind it. Connect and switch on the piano.";

    internal static string RecordingExists(string path) => $"The recording {path} is there already and is not overwritten. Choose another name.";

    internal static string NotRecorded(string path, string reason) => $"The recording {path} could not be written: {reason}";
}
