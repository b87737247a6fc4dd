using WarmupConsole.Midi.Ports;

namespace WarmupConsole.Midi.Listening;

/// <summary>The machine's MIDI inputs: a piano is found by the same wish as for playing on it.</summary>
public static class MidiInputs
{
    /// <summary>The names of all inputs, without the numbers that change.</summary>
    public static PortListing List()
    {
        if (!RtMidiLibrary.IsPresent)
        {
            IReadOnlyList<string> devices = new RawDevices().Names();
            return new(devices, devices.Count == 0 ? ListeningTexts.NoLibrary : null);
        }

        using QuietStandardError quiet = new();
        List<string> names = [];
        foreach (int api in RtMidiOut.Apis())
        {
            if (RtMidiIn.Create(api) is { } input)
            {
                names.AddRange(input.Names().Select(PortNames.WithoutNumbers));
                input.Close();
            }
        }

        return new(names, names.Count == 0 ? ListeningTexts.NoneFound : null);
    }

    public static InputOpening Open(PortChoice choice) => choice.Kind == PortChoiceKind.None
        ? new(null, ListeningTexts.NotWanted)
        : RawDevices.IsPath(choice) || !RtMidiLibrary.IsPresent
        ? OpenDevice(choice, new RawDevices())
        : OpenFound(choice);

    /// <summary>Through the kernel alone, as where no library is installed.</summary>
    public static InputOpening OpenDevice(PortChoice choice, RawDevices devices)
    {
        if (RawDevices.IsPath(choice))
        {
            return OpenPath(choice.Name, choice.Name);
        }

        IReadOnlyList<string> names = devices.Names();
        return PortNames.Find(names, choice) is >= 0 and int index
            ? OpenPath(RawDevices.PathIn(names[index]), names[index])
            : Nothing(choice, names);
    }

    private static InputOpening OpenPath(string path, string name) => RawInput.Open(path) is { } input
        ? new(input, ListeningTexts.Hearing(name))
        : new(null, ListeningTexts.NotOpened(name));

    // Each API in turn: the library itself does not go from one that fails to the next.
    private static InputOpening OpenFound(PortChoice choice)
    {
        using QuietStandardError quiet = new();
        List<string> seen = [];
        foreach (int api in RtMidiOut.Apis())
        {
            if (RtMidiIn.Create(api) is { } input)
            {
                List<string> names = input.Names();
                if (PortNames.Find(names, choice) is >= 0 and int index)
                {
                    if (PortNames.AreAlike(names, names[index]))
                    {
                        input.Close();
                        return new(null, ListeningTexts.SameName(PortNames.WithoutNumbers(names[index])));
                    }

                    return Opened(input, index, PortNames.WithoutNumbers(names[index]));
                }

                input.Close();
                seen.AddRange(names.Select(PortNames.WithoutNumbers));
            }
        }

        return Nothing(choice, seen);
    }

    private static InputOpening Opened(RtMidiIn input, int index, string name)
    {
        if (input.Open(index, name))
        {
            return new(input, ListeningTexts.Hearing(name));
        }

        input.Close();
        return new(null, ListeningTexts.NotOpened(name));
    }

    private static InputOpening Nothing(PortChoice choice, IReadOnlyList<string> names) =>
        new(null, choice.Kind == PortChoiceKind.Named ? ListeningTexts.NotFound(choice.Name, names) : ListeningTexts.NoneFound);
}
