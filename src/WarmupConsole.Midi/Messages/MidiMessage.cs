namespace WarmupConsole.Midi.Messages;

/// <summary>One channel message. Channels count from 0, as on the wire.</summary>
public readonly record struct MidiMessage(MidiMessageKind Kind, int Channel, int Data1, int Data2 = 0)
{
    /// <summary>The longest message, in bytes.</summary>
    public const int LongestLength = 3;

    public static MidiMessage NoteOn(int channel, int pitch, int velocity) => new(MidiMessageKind.NoteOn, channel, pitch, velocity);

    public static MidiMessage NoteOff(int channel, int pitch) => new(MidiMessageKind.NoteOff, channel, pitch, MidiConstants.ReleaseVelocity);

    public static MidiMessage Control(int channel, int controller, int value) => new(MidiMessageKind.ControlChange, channel, controller, value);

    public static MidiMessage Program(int channel, int program) => new(MidiMessageKind.ProgramChange, channel, program);

    /// <summary>Reads one whole message with its status byte. A note-on of velocity 0 is read as the note-off that it means.</summary>
    public static bool TryDecode(ReadOnlySpan<byte> bytes, out MidiMessage message)
    {
        message = default;
        if (bytes.IsEmpty || MessageTable.Find(bytes[0] & 0xF0) is not { } row || bytes.Length != row.Length || bytes[1..].ContainsAnyInRange((byte)0x80, (byte)0xFF))
        {
            return false;
        }

        int second = row.Second is null ? 0 : bytes[2];
        MidiMessageKind kind = row.Kind == MidiMessageKind.NoteOn && second == 0 ? MidiMessageKind.NoteOff : row.Kind;
        message = new(kind, bytes[0] & 0x0F, bytes[1], second);
        return true;
    }

    /// <summary>Writes the message and says how many bytes it took.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A field is out of its range; the message names it.</exception>
    public int Encode(Span<byte> target)
    {
        MessageRow row = MessageTable.Find((int)Kind) ?? throw MessageErrors.UnknownKind(Kind);
        Check(row);
        target[0] = (byte)((int)Kind | Channel);
        target[1] = (byte)Data1;
        if (row.Second is not null)
        {
            target[2] = (byte)Data2;
        }

        return row.Length;
    }

    private void Check(MessageRow row)
    {
        if (Channel is < 0 or > MessageTable.HighestChannel)
        {
            throw MessageErrors.Channel(row, Channel);
        }

        if (!row.First.Allows(Data1))
        {
            throw MessageErrors.Field(row, row.First, Data1);
        }

        if (row.Second is { } second && !second.Allows(Data2))
        {
            throw MessageErrors.Field(row, second, Data2);
        }
    }
}
