using System.Text;
using NAudio.Midi;
using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Music.Rhythm;
using MidiMessage = WarmupConsole.Midi.Messages.MidiMessage;

namespace WarmupConsole.Midi.Files;

/// <summary>Standard MIDI Files (format 0, 960 ticks a beat) of what was played.</summary>
public static class SmfFile
{
    /// <summary>The bytes of a file: name, tempo, then the messages at their times since the first of them.</summary>
    public static byte[] Build(string name, Tempo tempo, IReadOnlyList<TimedMessage> messages)
    {
        List<MidiEvent> track =
        [
            // The library cuts text to one byte a character, so the bytes are handed over ready.
            new TextEvent("", MetaEventType.SequenceTrackName, 0) { Data = Encoding.UTF8.GetBytes(name) },
            new TempoEvent(tempo.MicrosecondsPerBeat, 0),
        ];
        track.AddRange(messages.Select(m => EventOf(m, TickOf(m, tempo, messages[0].At))));
        MidiEventCollection events = new(0, Beats.TicksPerBeat);
        events.AddTrack(track);
        events.PrepareForExport(); // writes the end of track, without which no reader takes the file
        using MemoryStream stream = new();
        MidiFile.Export(stream, events);
        return stream.ToArray();
    }

    /// <summary>Writes beside the place and then moves there: whatever happens, no half file stands under the name.</summary>
    /// <exception cref="IOException">The file cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written to.</exception>
    public static void Save(string path, byte[] file)
    {
        string beside = path + ".part";
        File.WriteAllBytes(beside, file);
        File.Move(beside, path, overwrite: true);
    }

    private static long TickOf(TimedMessage message, Tempo tempo, Moment start) =>
        tempo.BeatsIn(message.At.Nanoseconds - start.Nanoseconds).Ticks;

    private static MidiEvent EventOf(TimedMessage timed, long tick)
    {
        if (!MidiMessage.TryDecode(timed.Bytes.Span, out MidiMessage message))
        {
            throw new ArgumentException($"{Convert.ToHexString(timed.Bytes.Span)} is no message of the console.", nameof(timed));
        }

        int channel = message.Channel + 1; // counted from 1 there
        return message.Kind switch
        {
            MidiMessageKind.ControlChange => new ControlChangeEvent(tick, channel, (MidiController)message.Data1, message.Data2),
            MidiMessageKind.ProgramChange => new PatchChangeEvent(tick, channel, message.Data1),
            MidiMessageKind.NoteOff => new NoteEvent(tick, channel, MidiCommandCode.NoteOff, message.Data1, message.Data2),
            _ => new NoteEvent(tick, channel, MidiCommandCode.NoteOn, message.Data1, message.Data2),
        };
    }
}
