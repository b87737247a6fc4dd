using WarmupConsole.Midi.Playing;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Tests.Simulation;

/// <summary>
/// What may sound, reckoned from what was asked for alone, by the rules of docs/player-protocol.md: every note on its beat, late ones only as
/// the rules allow, none from before a silence, each with its end.
/// </summary>
internal sealed class ScoreModel
{
    private PriorityQueue<(long Generation, ScoreNote Note), (long Tick, long Order)> _waiting = new();
    private readonly List<ScoreNote> _begun = [];
    private Timeline? _timeline;
    private long _generation;
    private long _order;

    /// <summary>True while nobody can hear what is played: no port, or no player.</summary>
    internal bool IsDeaf { get; set; } = true;

    /// <summary>Notes heard so far.</summary>
    internal int Heard { get; private set; }

    /// <summary>A new player knows nothing.</summary>
    internal void Reset()
    {
        (_waiting, _timeline, _generation, IsDeaf) = (new(), null, 0, true);
        _begun.Clear();
    }

    internal void SetTimeline(long generation, Timeline timeline) => _timeline = generation >= _generation ? timeline : _timeline;

    internal void Add(long generation, IReadOnlyList<ScoreNote> notes)
    {
        foreach (ScoreNote note in notes.Where(_ => generation >= _generation))
        {
            _waiting.Enqueue((generation, note), (note.Start.Ticks, _order++));
        }
    }

    internal void Silence(long generation)
    {
        _generation = generation;
        _waiting = new(_waiting.UnorderedItems.Where(item => item.Element.Generation >= generation));
        _begun.Clear();
    }

    /// <summary>Another port is opened: what sounded on the one before has ended.</summary>
    internal void ChangePort() => _begun.Clear();

    /// <summary>A key was struck: it must be the next note of the score.</summary>
    internal void Struck(int midi, Moment now)
    {
        while (_waiting.TryDequeue(out (long, ScoreNote Note) first, out _))
        {
            if (!MayBeDropped(first.Note, now))
            {
                Law.Holds(first.Note.Midi == midi, "Another note was due", midi);
                Law.Holds(TimeAt(first.Note.Start) <= now, "A note sounds before its time", midi);
                _begun.Add(first.Note);
                Heard++;
                return;
            }
        }

        Law.Broken("A note sounds that is not in the score", midi);
    }

    /// <summary>The player has sent all that was due.</summary>
    internal void CaughtUp(Moment now, SimulatedPiano piano)
    {
        while (_timeline is not null && _waiting.TryPeek(out (long, ScoreNote Note) first, out _) && TimeAt(first.Note.Start) <= now)
        {
            _waiting.Dequeue();
            Law.Holds(IsDeaf || MayBeDropped(first.Note, now), "A note that was due did not sound", first.Note);
        }

        _begun.RemoveAll(note => TimeAt(note.Start + note.Length) <= now);
        if (!IsDeaf)
        {
            Law.Holds(piano.Sounding.SetEquals(_begun.Select(note => note.Midi)), "Other notes sound than are held", piano);
        }
    }

    /// <summary>Everything that begins in the present rung ends in it.</summary>
    internal void EndsBy(Beats end)
    {
        foreach (ScoreNote note in _begun.Concat(_waiting.UnorderedItems.Select(item => item.Element.Note)))
        {
            Law.Holds(note.Start >= end || note.Start + note.Length <= end, "A note outlasts its rung", note);
        }
    }

    private bool MayBeDropped(ScoreNote note, Moment now) =>
        now - TimeAt(note.Start) > PlayerEngine.LatenessAllowed && TimeAt(new(note.Start.Ticks + (note.Length.Ticks / 2))) < now;

    private Moment TimeAt(Beats beat) => _timeline!.Value.TimeAt(beat);
}
