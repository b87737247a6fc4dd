using System.Runtime.Versioning;
using NAudio;
using NAudio.Midi;

namespace WarmupConsole.Midi.Ports;

/// <summary>The MIDI outputs that Windows itself lists. Compiled everywhere, so far run nowhere: no Windows machine was at hand.</summary>
[SupportedOSPlatform("windows")]
internal static class WinMmDevices
{
    internal static IReadOnlyList<string> Names() => [.. Enumerable.Range(0, MidiOut.NumberOfDevices).Select(number => MidiOut.DeviceInfo(number).ProductName)];

    internal static PortOpening Open(PortChoice choice)
    {
        IReadOnlyList<string> names = Names();
        return PortNames.Find(names, choice) is >= 0 and int number
            ? Open(choice, number, names[number])
            : new(new NullPort(), choice.Kind != PortChoiceKind.Named, choice.Kind == PortChoiceKind.Named ? PortTexts.NotFound(choice.Name, names) : PortTexts.NoneFound);
    }

    private static PortOpening Open(PortChoice choice, int number, string name)
    {
        try
        {
            return new(new WinMmPort(new MidiOut(number), name), true, PortTexts.Playing(name)) { Watch = new(choice, name) };
        }
        catch (MmException)
        {
            return new(new NullPort(), false, PortTexts.NotOpened(name));
        }
    }
}
