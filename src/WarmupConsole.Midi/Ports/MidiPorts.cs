using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Sound;
using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Midi.Ports;

/// <summary>The machine's MIDI outputs: listing and opening.</summary>
public static class MidiPorts
{
    /// <summary>The names of all ports, without the numbers that change.</summary>
    public static PortListing List()
    {
        if (!RtMidiLibrary.IsPresent)
        {
            IReadOnlyList<string> devices = SystemDevices.Names();
            return new(devices, devices.Count == 0 ? SystemDevices.None : null);
        }

        using QuietStandardError quiet = new();
        List<string> names = [];
        foreach (int api in RtMidiOut.Apis())
        {
            if (RtMidiOut.Create(api) is { } output)
            {
                names.AddRange(output.Names().Select(PortNames.WithoutNumbers));
                output.Close();
            }
        }

        return new(names, names.Count == 0 ? PortTexts.NoneFound : null);
    }

    /// <summary>
    /// Opens a port; there is always one to send to afterwards, if only one that swallows everything. One that is not there, or is
    /// lost later, can be opened again.
    /// </summary>
    /// <param name="choice">What is wanted.</param>
    /// <param name="tuning">Where A4 lies; as usual when it is left out.</param>
    public static PortOpening Open(PortChoice choice, Tuning? tuning = null)
    {
        Tuning a4 = tuning ?? Tuning.Iso16;
        if (choice.Kind == PortChoiceKind.None)
        {
            return new(new NullPort(), true, PortTexts.NothingWanted);
        }

        PortOpening opening = BuiltInSound.IsWished(choice) ? OpenLoudspeaker(choice, a4) : OpenTuned(choice, a4);
        if (choice.Kind == PortChoiceKind.First && opening.Watch?.Device is null)
        {
            opening = BuiltInSound.TryOpen(choice, a4) ?? opening;
        }

        opening = opening with { Watch = opening.Watch ?? new(choice, null) };
        return opening with { Port = new ReturningPort(opening, watch => OpenAgain(watch, a4)) };
    }

    private static PortOpening OpenLoudspeaker(PortChoice choice, Tuning tuning) => BuiltInSound.TryOpen(choice, tuning)
        ?? new(new NullPort(), false, PortTexts.NoLoudspeaker) { Watch = new(choice, null) { LoudspeakerIsLost = true } };

    /// <summary>An instrument before the loudspeaker, if both are there.</summary>
    private static PortOpening? OpenAgain(PortWatch watch, Tuning tuning)
    {
        PortOpening? device = BuiltInSound.IsWished(watch.Wish) ? null : OpenTuned(watch.Wish, tuning);
        return device?.Watch?.Device is not null ? device
            : watch.LoudspeakerIsLost && BuiltInSound.TryOpen(watch.Wish, tuning) is { } loudspeaker ? loudspeaker with { Watch = new(watch.Wish, null) }
            : null;
    }

    private static PortOpening OpenTuned(PortChoice choice, Tuning tuning)
    {
        PortOpening opening = OpenOnce(choice);
        Span<byte> bytes = stackalloc byte[MidiMessage.LongestLength];
        foreach (MidiMessage message in opening.Watch?.Device is null ? [] : TuningMessages.For(tuning))
        {
            opening.Port.Send(bytes[..message.Encode(bytes)]); // a port that is lost says so at the next message
        }

        return opening;
    }

    private static PortOpening OpenOnce(PortChoice choice) => RawDevices.IsPath(choice) || !RtMidiLibrary.IsPresent
        ? SystemDevices.Open(choice)
        : OpenFound(choice);

    // Each API in turn: the library itself does not go from one that fails to the next.
    private static PortOpening OpenFound(PortChoice choice)
    {
        using QuietStandardError quiet = new();
        List<string> seen = [];
        foreach (int api in RtMidiOut.Apis())
        {
            if (RtMidiOut.Create(api) is { } output)
            {
                List<string> names = output.Names();
                if (PortNames.Find(names, choice) is >= 0 and int index)
                {
                    return Open(choice, output, index, names[index]);
                }

                output.Close();
                seen.AddRange(names.Select(PortNames.WithoutNumbers));
            }
        }

        return Nothing(choice, choice.Kind == PortChoiceKind.Named ? PortTexts.NotFound(choice.Name, seen) : PortTexts.NoneFound);
    }

    private static PortOpening Open(PortChoice choice, RtMidiOut output, int index, string device)
    {
        string name = PortNames.WithoutNumbers(device);
        if (output.Open(index))
        {
            return new(new RtMidiPort(output, name), true, PortTexts.Playing(name)) { Watch = new(choice, device) };
        }

        output.Close();
        return new(new NullPort(), false, PortTexts.NotOpened(name));
    }

    // Without a wish for a certain port, having none is no failure: it is said, and the run goes on.
    private static PortOpening Nothing(PortChoice choice, string sentence) => new(new NullPort(), choice.Kind != PortChoiceKind.Named, sentence);
}
