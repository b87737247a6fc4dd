using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.App.Running;

/// <summary>
/// The notes that the console played a moment ago, or is about to play. Some pianos, and cables of software, send back whatever they
/// are sent; that is nobody who plays. Each note comes back once, so a key that is really struck beside it still counts. Any thread.
/// </summary>
internal sealed class OwnNotes
{
    /// <summary>Clocks of two processes and a driver lie between what was due and what comes back.</summary>
    private static readonly TimeSpan Early = TimeSpan.FromMilliseconds(50);

    /// <summary>Longer than any way through a machine or the air takes, and shorter than a key is struck again by hand.</summary>
    private static readonly TimeSpan Late = TimeSpan.FromMilliseconds(400);

    private readonly Lock _lock = new();
    private readonly List<(int Midi, Beats Start, Moment Due)> _notes = [];
    private readonly HashSet<int> _down = [];
    private Timeline _timeline;

    /// <summary>What is still to come is due at other moments.</summary>
    internal void SetTimeline(Timeline timeline, Moment now)
    {
        lock (_lock)
        {
            _timeline = timeline;
            for (int at = 0; at < _notes.Count; at++)
            {
                (int midi, Beats start, Moment due) = _notes[at];
                _notes[at] = due > now ? (midi, start, timeline.TimeAt(start)) : _notes[at];
            }
        }
    }

    internal void Play(IReadOnlyList<ScoreNote> notes, Moment now)
    {
        lock (_lock)
        {
            _notes.RemoveAll(note => note.Due + Late < now);
            _notes.AddRange(notes.Select(note => (note.Midi, note.Start, Later(_timeline.TimeAt(note.Start), now))));
        }
    }

    /// <summary>What was still to come will not.</summary>
    internal void Silence(Moment now)
    {
        lock (_lock)
        {
            _notes.RemoveAll(note => note.Due > now);
        }
    }

    /// <summary>True when a key that goes down or up at this moment is one that the console itself has played.</summary>
    internal bool IsEcho(int midi, bool isDown, Moment now)
    {
        lock (_lock)
        {
            if (!isDown)
            {
                return _down.Remove(midi);
            }

            int at = _notes.FindIndex(note => note.Midi == midi && note.Due - Early <= now && now <= note.Due + Late);
            if (at < 0)
            {
                return false;
            }

            _notes.RemoveAt(at);
            _down.Add(midi);
            return true;
        }
    }

    /// <summary>A note whose beat has passed sounds as soon as it is handed over.</summary>
    private static Moment Later(Moment due, Moment now) => due > now ? due : now;
}
