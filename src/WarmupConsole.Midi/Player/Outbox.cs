using WarmupConsole.Midi.Protocol;

namespace WarmupConsole.Midi.Player;

/// <summary>Frames on their way to the writing thread. Adding never waits; taking does.</summary>
internal sealed class Outbox
{
    private readonly object _lock = new();
    private Queue<Frame> _frames = new();
    private bool _closed;

    /// <summary>False when it is full: the other side has stopped taking anything.</summary>
    internal bool TryAdd(Frame frame)
    {
        lock (_lock)
        {
            if (_closed || _frames.Count == ProtocolConstants.MostQueuedFrames)
            {
                return _closed;
            }

            _frames.Enqueue(frame);
            Monitor.Pulse(_lock);
            return true;
        }
    }

    /// <summary>A silence does not stand in line behind what it forbids.</summary>
    internal void Forget(long olderThanGeneration)
    {
        lock (_lock)
        {
            _frames = new(_frames.Where(frame => !IsOlder(frame, olderThanGeneration)));
        }
    }

    /// <summary>The next frame, waiting for it; null when closed and empty.</summary>
    internal Frame? Take()
    {
        lock (_lock)
        {
            while (_frames.Count == 0 && !_closed)
            {
                Monitor.Wait(_lock);
            }

            return _frames.TryDequeue(out Frame? frame) ? frame : null;
        }
    }

    /// <summary>Nothing more is taken in; what is inside still goes out.</summary>
    internal void Close()
    {
        lock (_lock)
        {
            _closed = true;
            Monitor.PulseAll(_lock);
        }
    }

    private static bool IsOlder(Frame frame, long generation) => frame switch
    {
        Frame.Notes notes => notes.Generation < generation,
        Frame.SetTimeline timeline => timeline.Generation < generation,
        _ => false,
    };
}
