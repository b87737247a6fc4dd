using System.Buffers.Binary;
using System.Text;
using WarmupConsole.Midi.Playing;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Midi.Protocol;

/// <summary>Writes frames, each in one write and flushed. Used by one thread.</summary>
public sealed class FrameWriter(Stream stream)
{
    private readonly byte[] _buffer = new byte[ProtocolConstants.HeaderBytes + ProtocolConstants.LongestPayload + ProtocolConstants.CheckBytes];
    private int _at;

    /// <exception cref="IOException">The other side is gone.</exception>
    public void Write(Frame frame)
    {
        _at = ProtocolConstants.HeaderBytes;
        _buffer[ProtocolConstants.LengthBytes] = (byte)Payload(frame);
        BinaryPrimitives.WriteUInt16LittleEndian(_buffer, (ushort)(_at - ProtocolConstants.HeaderBytes));
        Put(ProtocolConstants.Check(_buffer.AsSpan(0, _at)));
        stream.Write(_buffer, 0, _at);
        stream.Flush();
    }

    private FrameType Payload(Frame frame) => frame switch
    {
        Frame.SetTimeline timeline => Put(timeline),
        Frame.Notes notes => Put(notes),
        Frame.Silence silence => Put(FrameType.Silence, silence.Generation),
        Frame.Silenced silenced => Put(FrameType.Silenced, silenced.Generation, silenced.At.Nanoseconds),
        Frame.Onsets onsets => Put(onsets.Figures),
        Frame.Quit => FrameType.Quit,
        _ => Greeting(frame),
    };

    private FrameType Greeting(Frame frame) => frame switch
    {
        Frame.Hello hello => Put(FrameType.Hello, hello.Version),
        Frame.Ready ready => Put(FrameType.Ready, ready.Version),
        Frame.OpenPort open => Put(open),
        Frame.PortOpened opened => Put(FrameType.PortOpened, opened.Sentence),
        Frame.PortFailed failed => Put(FrameType.PortFailed, failed.Sentence),
        Frame.PortLost lost => Put(FrameType.PortLost, lost.Sentence),
        Frame.Refused refused => Put(FrameType.Refused, refused.Sentence),
        Frame.Heard heard => Put(heard),
        Frame.InputOpened opened => Put(FrameType.InputOpened, opened.Sentence),
        Frame.InputLost lost => Put(FrameType.InputLost, lost.Sentence),
        _ => throw new ArgumentException($"{frame.GetType().Name} has no place in the protocol.", nameof(frame)),
    };

    private FrameType Put(Frame.SetTimeline frame)
    {
        (Tempo tempo, Beats beat, Moment time) = frame.Timeline;
        Put(frame.Generation);
        Put(tempo.MilliBeatsPerMinute);
        Put(beat.Ticks);
        Put(time.Nanoseconds);
        return FrameType.Timeline;
    }

    private FrameType Put(Frame.Notes frame)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(frame.List.Count, ProtocolConstants.MostNotesInFrame);
        Put(frame.Generation);
        foreach (ScoreNote note in frame.List)
        {
            Put(note.Start.Ticks);
            Put(checked((uint)note.Length.Ticks));
            _buffer[_at++] = checked((byte)note.Midi);
            _buffer[_at++] = checked((byte)note.Velocity);
        }

        return FrameType.Notes;
    }

    private FrameType Put(Frame.Heard frame)
    {
        _at += frame.Message.Encode(_buffer.AsSpan(_at));
        return FrameType.Heard;
    }

    private FrameType Put(Frame.OpenPort frame)
    {
        _buffer[_at++] = (byte)frame.Choice.Kind;
        return Put(FrameType.OpenPort, frame.Choice.Name);
    }

    private FrameType Put(OnsetFigures figures)
    {
        Put(figures.Played);
        Put(figures.Dropped);
        Put(figures.MedianNanoseconds);
        Put(figures.Percentile99Nanoseconds);
        Put(figures.WorstNanoseconds);
        return FrameType.Onsets;
    }

    private FrameType Put(FrameType type, int value)
    {
        Put(value);
        return type;
    }

    private FrameType Put(FrameType type, params ReadOnlySpan<long> values)
    {
        foreach (long value in values)
        {
            Put(value);
        }

        return type;
    }

    // A text that is too long is cut, at a whole character: it is for reading, and a report must not fail.
    private FrameType Put(FrameType type, string text)
    {
        int room = ProtocolConstants.HeaderBytes + ProtocolConstants.LongestPayload - _at;
        Encoding.UTF8.GetEncoder().Convert(text, _buffer.AsSpan(_at, room), flush: true, out _, out int written, out _);
        _at += written;
        return type;
    }

    private void Put(int value)
    {
        BinaryPrimitives.WriteInt32LittleEndian(_buffer.AsSpan(_at), value);
        _at += sizeof(int);
    }

    private void Put(uint value) => Put(unchecked((int)value));

    private void Put(long value)
    {
        BinaryPrimitives.WriteInt64LittleEndian(_buffer.AsSpan(_at), value);
        _at += sizeof(long);
    }
}
