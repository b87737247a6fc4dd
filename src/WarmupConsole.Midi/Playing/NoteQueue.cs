using WarmupConsole.Midi.Protocol;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Midi.Playing;

/// <summary>The notes that have not begun, earliest first, in the order given at one tick. Allocates nothing while playing.</summary>
internal sealed class NoteQueue
{
    private readonly PriorityQueue<QueuedNote, (long Tick, long Order)> _notes = new(ProtocolConstants.MostQueuedNotes);
    private readonly List<QueuedNote> _kept = new(ProtocolConstants.MostQueuedNotes);
    private long _order;

    internal int Count => _notes.Count;

    internal long? FirstTick => _notes.TryPeek(out QueuedNote first, out _) ? first.OnTick : null;

    /// <summary>Takes all of the notes, or none when there is no room for all.</summary>
    internal bool TryAdd(long generation, IReadOnlyList<ScoreNote> notes)
    {
        if (notes.Count > ProtocolConstants.MostQueuedNotes - _notes.Count)
        {
            return false;
        }

        for (int i = 0; i < notes.Count; i++)
        {
            ScoreNote note = notes[i];
            Add(new(generation, note.Start.Ticks, note.Start.Ticks + note.Length.Ticks, (byte)note.Midi, (byte)note.Velocity));
        }

        return true;
    }

    internal QueuedNote TakeFirst() => _notes.Dequeue();

    internal void Forget(long olderThanGeneration)
    {
        _kept.Clear();
        while (_notes.TryDequeue(out QueuedNote note, out _))
        {
            if (note.Generation >= olderThanGeneration)
            {
                _kept.Add(note);
            }
        }

        foreach (QueuedNote note in _kept)
        {
            Add(note);
        }
    }

    private void Add(QueuedNote note) => _notes.Enqueue(note, (note.OnTick, _order++));
}
