using System.Text;
using NAudio.Midi;
using WarmupConsole.Midi.Messages;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Music.Writing;

namespace WarmupConsole.Midi.Files;

/// <summary>A written piece as a Standard MIDI File of format 1: first a track for tempos, signatures and markers, then one for each voice.</summary>
public static class SmfPiece
{
    /// <summary>Each voice has a channel of its own: sixteen, without that of percussion.</summary>
    public const int MostTracks = 15;

    private const int PercussionChannel = 10; // counted from 1, as the library does
    private const int ClocksPerQuarter = 24;
    private const int ThirtySecondsPerQuarter = 8;

    /// <summary>The bytes of the file.</summary>
    /// <exception cref="ArgumentException">The piece has more than <see cref="MostTracks"/> voices.</exception>
    public static byte[] Build(WrittenPiece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        if (piece.Tracks.Count > MostTracks)
        {
            throw new ArgumentException($"A piece has at most {MostTracks} voices, not {piece.Tracks.Count}.", nameof(piece));
        }

        MidiEventCollection events = new(1, Beats.TicksPerBeat);
        events.AddTrack(Whole([Text(piece.Title, MetaEventType.SequenceTrackName, Beats.Zero), .. Course(piece).OrderBy(e => e.AbsoluteTime)], piece.Length));
        foreach ((int index, WrittenTrack track) in piece.Tracks.Index())
        {
            events.AddTrack(Whole(Voice(track, index + 1 < PercussionChannel ? index + 1 : index + 2), piece.Length));
        }

        using MemoryStream stream = new();
        MidiFile.Export(stream, events);
        return stream.ToArray();
    }

    private static IEnumerable<MidiEvent> Course(WrittenPiece piece) =>
    [
        .. piece.Remarks.Select(remark => Text(remark, MetaEventType.TextEvent, Beats.Zero)),
        .. piece.Tempos.Select(tempo => new TempoEvent(tempo.Value.MicrosecondsPerBeat, tempo.At.Ticks)),
        .. piece.Meters.Select(meter => new TimeSignatureEvent(meter.At.Ticks, meter.Value.Count, int.Log2(meter.Value.Unit), ClocksPerQuarter, ThirtySecondsPerQuarter)),
        .. piece.Keys.Select(key => new KeySignatureEvent(key.Value.Fifths, ModeData.Semitones(key.Value.Mode, 3) == 4 ? 0 : 1, key.At.Ticks)),
        .. piece.Markers.Select(marker => Text(marker.Value, MetaEventType.Marker, marker.At)),
    ];

    private static List<MidiEvent> Voice(WrittenTrack track, int channel)
    {
        int program = track.IsSung ? MidiConstants.ChoirAahs : MidiConstants.GrandPiano;
        return
        [
            Text(track.Name, MetaEventType.SequenceTrackName, Beats.Zero),
            new PatchChangeEvent(0, channel, program),
            .. track.Words.Select(word => Text(word.Value, MetaEventType.Lyric, word.At)).Concat(Notes(track.Notes, channel)).OrderBy(e => e.AbsoluteTime).ThenBy(Order),
        ];
    }

    private static IEnumerable<MidiEvent> Notes(IReadOnlyList<ScoreNote> notes, int channel) => notes.SelectMany<ScoreNote, MidiEvent>(note =>
    [
        new NoteEvent(note.Start.Ticks, channel, MidiCommandCode.NoteOn, note.Midi, note.Velocity),
        new NoteEvent((note.Start + note.Length).Ticks, channel, MidiCommandCode.NoteOff, note.Midi, MidiConstants.ReleaseVelocity),
    ]);

    /// <summary>At one tick a key is let go before it is struck again, and a word comes before its note.</summary>
    private static int Order(MidiEvent one) => one switch
    {
        { CommandCode: MidiCommandCode.NoteOff } => 0,
        MetaEvent => 1,
        _ => 2,
    };

    private static List<MidiEvent> Whole(List<MidiEvent> track, Beats length) => [.. track, new MetaEvent(MetaEventType.EndTrack, 0, length.Ticks)];

    // The library cuts text to one byte a character, so the bytes are handed over ready.
    private static TextEvent Text(string text, MetaEventType type, Beats at) => new("", type, at.Ticks) { Data = Encoding.UTF8.GetBytes(text) };
}
