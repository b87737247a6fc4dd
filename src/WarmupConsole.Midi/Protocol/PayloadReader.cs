using System.Buffers.Binary;
using System.Text;
using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Playing;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Midi.Protocol;

/// <summary>Takes the fields of one payload from front to back.</summary>
internal ref struct PayloadReader
{
    // At the slowest tempo two such positions plus such a time still fit into a long.
    private const long LatestTick = 1L << 39;
    private const long LatestTime = 1L << 61;

    private static readonly UTF8Encoding StrictUtf8 = new(false, throwOnInvalidBytes: true);

    private readonly FrameType _type;
    private readonly int _length;
    private ReadOnlySpan<byte> _rest;

    private PayloadReader(FrameType type, ReadOnlySpan<byte> payload)
    {
        _type = type;
        _length = payload.Length;
        _rest = payload;
    }

    internal static Frame Read(FrameType type, ReadOnlySpan<byte> payload)
    {
        PayloadReader reader = new(type, payload);
        Frame frame = type < FrameType.Ready ? reader.FromHost() : reader.FromPlayer();
        return reader._rest.IsEmpty ? frame : throw reader.WrongLength();
    }

    private Frame FromHost() => _type switch
    {
        FrameType.Hello => new Frame.Hello(Int32()),
        FrameType.OpenPort => OpenPort(),
        FrameType.Timeline => Timeline(),
        FrameType.Notes => Notes(),
        FrameType.Silence => new Frame.Silence(Int64()),
        FrameType.Quit => new Frame.Quit(),
        _ => throw ProtocolErrors.UnknownType((int)_type),
    };

    private Frame FromPlayer() => _type switch
    {
        FrameType.Ready => new Frame.Ready(Int32()),
        FrameType.PortOpened => new Frame.PortOpened(Text()),
        FrameType.PortFailed => new Frame.PortFailed(Text()),
        FrameType.PortLost => new Frame.PortLost(Text()),
        FrameType.Silenced => new Frame.Silenced(Int64(), new(Int64())),
        FrameType.Refused => new Frame.Refused(Text()),
        FrameType.Heard => new Frame.Heard(Message()),
        FrameType.InputOpened => new Frame.InputOpened(Text()),
        FrameType.InputLost => new Frame.InputLost(Text()),
        FrameType.Onsets => new Frame.Onsets(new OnsetFigures(Int32(), Int32(), Int64(), Int64(), Int64())),
        _ => throw ProtocolErrors.UnknownType((int)_type),
    };

    private MidiMessage Message() => MidiMessage.TryDecode(Take(_rest.Length), out MidiMessage message) ? message : throw WrongLength();

    private Frame.OpenPort OpenPort()
    {
        int kind = (int)InRange("Port choice", Take(1)[0], (int)PortChoiceKind.First, (int)PortChoiceKind.None);
        return new(new PortChoice((PortChoiceKind)kind, Text()));
    }

    private Frame.SetTimeline Timeline()
    {
        long generation = Int64();
        int tempo = (int)InRange("Tempo", Int32(), Tempo.SlowestBeatsPerMinute * 1000, Tempo.FastestBeatsPerMinute * 1000);
        return new(generation, new(Tempo.FromMilliBeatsPerMinute(tempo), new(Beat("Beat origin")), new(InRange("Time origin", Int64(), -LatestTime, LatestTime))));
    }

    private Frame.Notes Notes()
    {
        long generation = Int64();
        (int count, int rest) = Math.DivRem(_rest.Length, ProtocolConstants.NoteBytes);
        if (rest != 0 || count is 0 or > ProtocolConstants.MostNotesInFrame)
        {
            throw WrongLength();
        }

        ScoreNote[] notes = new ScoreNote[count];
        for (int i = 0; i < count; i++)
        {
            notes[i] = Note();
        }

        return new(generation, notes);
    }

    private ScoreNote Note()
    {
        long start = Beat("Note start");
        long length = InRange("Note length", BinaryPrimitives.ReadUInt32LittleEndian(Take(sizeof(uint))), 1, uint.MaxValue);
        int pitch = (int)InRange("Pitch", Take(1)[0], 0, 127);
        int velocity = (int)InRange("Velocity", Take(1)[0], 1, 127);
        return new(pitch, new(start), new(length), velocity);
    }

    private long Beat(string field) => InRange(field, Int64(), -LatestTick, LatestTick);

    private string Text()
    {
        try
        {
            return StrictUtf8.GetString(Take(_rest.Length));
        }
        catch (DecoderFallbackException)
        {
            throw ProtocolErrors.NotText((int)_type);
        }
    }

    private int Int32() => BinaryPrimitives.ReadInt32LittleEndian(Take(sizeof(int)));

    private long Int64() => BinaryPrimitives.ReadInt64LittleEndian(Take(sizeof(long)));

    private ReadOnlySpan<byte> Take(int count)
    {
        if (_rest.Length < count)
        {
            throw WrongLength();
        }

        ReadOnlySpan<byte> taken = _rest[..count];
        _rest = _rest[count..];
        return taken;
    }

    private readonly ProtocolException WrongLength() => ProtocolErrors.WrongLength((int)_type, _length);

    private static long InRange(string field, long value, long lowest, long highest) =>
        value >= lowest && value <= highest ? value : throw ProtocolErrors.OutOfRange(field, value, $"{lowest}–{highest}");
}
