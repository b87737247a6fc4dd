using WarmupConsole.Midi.Messages;

namespace WarmupConsole.Midi.Synthesis;

/// <summary>Hands messages from one thread to another without a lock and without allocating.</summary>
internal sealed class MessageRing
{
    private const int Size = 4096;
    private readonly MidiMessage[] _messages = new MidiMessage[Size];
    private long _written;
    private long _read;

    /// <summary>False when there is no room: nobody has taken anything for long.</summary>
    internal bool TryAdd(MidiMessage message)
    {
        if (_written - Volatile.Read(ref _read) == Size)
        {
            return false;
        }

        _messages[_written % Size] = message;
        Volatile.Write(ref _written, _written + 1);
        return true;
    }

    internal bool TryTake(out MidiMessage message)
    {
        bool isThere = _read < Volatile.Read(ref _written);
        message = isThere ? _messages[_read % Size] : default;
        if (isThere)
        {
            Volatile.Write(ref _read, _read + 1);
        }

        return isThere;
    }
}
