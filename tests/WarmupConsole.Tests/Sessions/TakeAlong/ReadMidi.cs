using System.Text;
using NAudio.Midi;

namespace WarmupConsole.Tests.Sessions.TakeAlong;

/// <summary>A Standard MIDI File read strictly by the library's own reader: notes in seconds by the file's own tempos, texts by their kinds.</summary>
internal sealed class ReadMidi
{
    private readonly MidiFile file;
    private readonly TempoEvent[] tempos;

    internal ReadMidi(byte[] bytes)
    {
        file = new(new MemoryStream(bytes), strictChecking: true);
        tempos = [.. file.Events[0].OfType<TempoEvent>()];
    }

    internal int Format => file.FileFormat;

    internal int TicksPerBeat => file.DeltaTicksPerQuarterNote;

    internal int Tracks => file.Tracks;

    internal IList<MidiEvent> Track(int track) => file.Events[track];

    internal IReadOnlyList<(long Tick, string Text)> Texts(int track, MetaEventType type) =>
        [.. file.Events[track].OfType<TextEvent>().Where(text => text.MetaEventType == type).Select(text => (text.AbsoluteTime, Encoding.UTF8.GetString(text.Data)))];

    /// <summary>All notes of a track, in seconds since the beginning.</summary>
    internal TimedNote[] Notes(int track) =>
        [.. NoteOns(track).Select(on => new TimedNote(on.NoteNumber, Seconds(on.AbsoluteTime), Seconds(on.OffEvent!.AbsoluteTime), on.Velocity)).Order()];

    internal IEnumerable<NoteOnEvent> NoteOns(int track) => file.Events[track].OfType<NoteOnEvent>().Where(on => on.Velocity > 0);

    internal double Seconds(long tick)
    {
        double seconds = 0;
        for (int at = 0; at < tempos.Length && tempos[at].AbsoluteTime < tick; at++)
        {
            long until = at + 1 < tempos.Length ? Math.Min(tick, tempos[at + 1].AbsoluteTime) : tick;
            seconds += (until - tempos[at].AbsoluteTime) * (tempos[at].MicrosecondsPerQuarterNote / 1e6) / TicksPerBeat;
        }

        return seconds;
    }
}
