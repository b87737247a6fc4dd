using WarmupConsole.Midi.Messages;

namespace WarmupConsole.Midi.Listening;

/// <summary>
/// Finds whole messages in bytes as a cable brings them, in pieces of any size: a status byte counts until the next one, clock and
/// active sensing may stand within a message, and system messages are passed over (MIDI 1.0 Detailed Specification 4.2, "running
/// status" and "system real time").
/// </summary>
public sealed class MessageAssembler
{
    private const byte Status = 0x80;
    private const byte System = 0xF0;
    private const byte RealTime = 0xF8;

    private readonly byte[] _message = new byte[MidiMessage.LongestLength];
    private int _length;

    /// <summary>The messages that are whole with this byte: one, or null. Kinds that the console does not know are left out.</summary>
    public MidiMessage? Take(byte next)
    {
        if (next >= RealTime)
        {
            return null;
        }

        if (next >= Status)
        {
            // Data after a system message belong to nobody until a status byte comes.
            _message[0] = next < System ? next : (byte)0;
            _length = next < System ? 1 : 0;
            return null;
        }

        return _message[0] == 0 ? null : WithData(next);
    }

    private MidiMessage? WithData(byte data)
    {
        _message[_length++] = data;
        if (_length < LengthOf(_message[0]))
        {
            return null;
        }

        int whole = _length;
        _length = 1;
        return MidiMessage.TryDecode(_message.AsSpan(0, whole), out MidiMessage message) ? message : null;
    }

    /// <summary>Program change and channel pressure have one data byte, every other channel message two.</summary>
    private static int LengthOf(byte status) => (status & 0xF0) is 0xC0 or 0xD0 ? 2 : 3;
}
