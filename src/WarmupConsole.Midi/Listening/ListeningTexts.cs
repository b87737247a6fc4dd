namespace WarmupConsole.Midi.Listening;

/// <summary>What the director is told about hearing a piano.</summary>
internal static class ListeningTexts
{
    internal const string NotWanted = "Nothing is heard: no port, as chosen.";
    internal const string NoneFound = "Nothing is heard: no MIDI input found. Connect and switch on the piano, or type the line.";

    internal static string Hearing(string name) => $"Listening to {name}.";

    internal static string NotFound(string wanted, IReadOnlyList<string> names) => names.Count == 0
        ? $"Nothing is heard: there is no input named '{wanted}', nor any other. Connect and switch on the piano, or type the line."
        : $"Nothing is heard: no input's name contains '{wanted}'. There are: {string.Join("; ", names)}.";

    internal static string NotOpened(string name) => $"Nothing is heard: {name} could not be opened. Another program may hold it: close that, or type the line.";
}
