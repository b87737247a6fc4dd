using WarmupConsole.Midi.Player;

namespace WarmupConsole.Midi.Listening;

/// <summary>What the director is told about hearing a piano.</summary>
internal static class ListeningTexts
{
    private const string DoNothing = "Pedals and keys of the piano do nothing now; leave and start the console again to use them.";

    internal const string NotWanted = "Nothing is heard: no port, as chosen.";
    internal const string NoneFound = "Nothing is heard: no MIDI input found. Connect and switch on the piano.";

    internal const string Inputs = "Inputs, for pedals, played keys and follow mode:";
    internal const string FirstFound = "the first instrument found; for another one write its name as input: in settings.yaml";
    internal const string NoLibrary = $"{NoneFound} The MIDI library RtMidi 5 or later is not installed, and may be what is missing (Debian, Ubuntu: apt install librtmidi6; macOS: brew install rtmidi; Windows: rtmidi.dll beside the program).";

    internal static string WouldHear(string name, string why) => $"Pedals, played keys and follow mode would listen to {name}: {why}.";

    internal static string Hearing(string name) => $"Listening to {name}.";

    internal static string NotFound(string wanted, IReadOnlyList<string> names) => names.Count == 0
        ? $"Nothing is heard: there is no input named '{wanted}', nor any other. Connect and switch on the piano, then try again."
        : $"Nothing is heard: no input's name contains '{wanted}'. There are: {string.Join("; ", names)}.";

    internal static string SameName(string name) =>
        $"Nothing is heard: two inputs are named {name}, and which is meant cannot be known. Unplug one, or write another one's name as input: in settings.yaml.";

    internal static string Lost(string name) => $"{name} is no longer heard: its cable or its power is gone. Pedals and keys act again once it is back.";

    internal static string StartsAgain(string lastWords) => $"{Ended(lastWords)} It is started again.";

    internal static string GivenUp(string lastWords) => $"{Ended(lastWords)} It was started {RestartLimit.Most} times within a minute and ended each time. {DoNothing}";

    internal static string NotStarted(string reason) => $"Listening to the piano could not be started: {reason} {DoNothing}";

    private static string Ended(string lastWords) => lastWords.Length == 0 ? "Listening to the piano ended by itself." : $"Listening to the piano ended by itself ({lastWords}).";

    internal static string NotOpened(string name) => $"Nothing is heard: {name} could not be opened. Another program may hold it: close that, then try again.";
}
