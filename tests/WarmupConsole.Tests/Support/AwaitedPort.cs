using WarmupConsole.Midi.Ports;

namespace WarmupConsole.Tests.Support;

/// <summary>Records in another thread, and lets the test wait for a number of messages.</summary>
internal sealed class AwaitedPort : IMidiPort
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);
    private readonly object _lock = new();
    private readonly List<string> _sent = [];
    private bool _blocks;
    private bool _holdsBack;

    public string Name => "awaited";

    internal bool IsClosed { get; private set; }

    public bool Send(ReadOnlySpan<byte> message)
    {
        lock (_lock)
        {
            _sent.Add(Convert.ToHexString(message));
            _holdsBack = _blocks;
            Monitor.PulseAll(_lock);
            while (_blocks)
            {
                Monitor.Wait(_lock);
            }

            return true;
        }
    }

    public string? Close()
    {
        IsClosed = true;
        return null;
    }

    /// <summary>Whether sending a message never ends, as with a driver that has stopped.</summary>
    internal void Block(bool blocks)
    {
        lock (_lock)
        {
            _blocks = blocks;
            Monitor.PulseAll(_lock);
        }
    }

    internal void WaitUntilHeldBack()
    {
        lock (_lock)
        {
            while (!_holdsBack)
            {
                Assert.True(Monitor.Wait(_lock, Patience), "Nothing was sent.");
            }
        }
    }

    /// <summary>All messages, once there are that many.</summary>
    internal string[] WaitFor(int count)
    {
        lock (_lock)
        {
            while (_sent.Count < count)
            {
                Assert.True(Monitor.Wait(_lock, Patience), $"Only {_sent.Count} of {count} messages came: {string.Join(' ', _sent)}");
            }

            return [.. _sent];
        }
    }
}
