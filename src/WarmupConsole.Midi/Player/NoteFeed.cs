using WarmupConsole.Midi.Protocol;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Midi.Player;

/// <summary>The notes on the host's side: passed on two bars ahead, asked for again when one of them is used up.</summary>
internal sealed class NoteFeed
{
    private static readonly Beats Ahead = Beats.FromBeats(ProtocolConstants.BeatsAhead);
    private static readonly Beats AskAgainAhead = Beats.FromBeats(ProtocolConstants.BeatsAhead / 2);

    private PriorityQueue<(long Generation, ScoreNote Note), (long Tick, long Order)> _notes = new();
    private Timeline? _timeline;
    private long _generation;
    private long _order;

    /// <summary>When <see cref="TakeNear"/> is to be called next; null when nothing waits.</summary>
    internal Moment? NextTime => _timeline is { } timeline && _notes.TryPeek(out var first, out _)
        ? timeline.TimeAt(first.Note.Start - AskAgainAhead)
        : null;

    internal void SetTimeline(long generation, Timeline timeline)
    {
        if (generation >= _generation)
        {
            _timeline = timeline;
        }
    }

    internal void Add(long generation, IReadOnlyList<ScoreNote> notes)
    {
        if (generation < _generation)
        {
            return;
        }

        foreach (ScoreNote note in notes)
        {
            _notes.Enqueue((generation, note), (note.Start.Ticks, _order++));
        }
    }

    internal void Forget(long olderThanGeneration)
    {
        _generation = Math.Max(_generation, olderThanGeneration);
        _notes = new(_notes.UnorderedItems.Where(item => item.Element.Generation >= _generation));
    }

    /// <summary>Takes the notes that are near, in frames.</summary>
    internal IEnumerable<Frame.Notes> TakeNear(Moment now)
    {
        if (_timeline is not { } timeline)
        {
            yield break;
        }

        Beats horizon = timeline.BeatAt(now) + Ahead;
        while (HasBefore(horizon))
        {
            yield return TakeFrame(horizon);
        }
    }

    private bool HasBefore(Beats horizon) => _notes.TryPeek(out var first, out _) && first.Note.Start <= horizon;

    // A frame carries one generation, so it ends where the next generation begins.
    private Frame.Notes TakeFrame(Beats horizon)
    {
        long generation = _notes.Peek().Generation;
        List<ScoreNote> taken = [];
        while (taken.Count < ProtocolConstants.MostNotesInFrame && HasBefore(horizon) && _notes.Peek().Generation == generation)
        {
            taken.Add(_notes.Dequeue().Note);
        }

        return new(generation, taken);
    }
}
