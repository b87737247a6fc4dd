using WarmupConsole.Midi.Protocol;

namespace WarmupConsole.Midi.Playing;

/// <summary>The notes that owe a note-off, the first to end first, and how many of them hold each pitch.</summary>
internal sealed class SoundingNotes
{
    private readonly PriorityQueue<byte, (long Tick, long Order)> _ends = new(ProtocolConstants.MostSoundingNotes);
    private readonly int[] _holders = new int[128];
    private long _order;

    internal long? FirstEnd => _ends.TryPeek(out _, out (long Tick, long Order) end) ? end.Tick : null;

    internal bool IsFull => _ends.Count == ProtocolConstants.MostSoundingNotes;

    internal bool Holds(int pitch) => _holders[pitch] > 0;

    internal void Begin(byte pitch, long endTick)
    {
        _ends.Enqueue(pitch, (endTick, _order++));
        _holders[pitch]++;
    }

    /// <summary>Ends the first note to end; true when its pitch is held by no other.</summary>
    internal bool End(out byte pitch)
    {
        pitch = _ends.Dequeue();
        return --_holders[pitch] == 0;
    }

    internal void Clear()
    {
        _ends.Clear();
        Array.Clear(_holders);
    }
}
