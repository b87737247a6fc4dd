using WarmupConsole.Midi.Listening;
using WarmupConsole.Midi.Timing;

namespace WarmupConsole.Tests.Support;

/// <summary>A piano that somebody plays on: each message arrives at its own moment, all of them once <see cref="Play"/> was called.</summary>
internal sealed class PlayedInput(VirtualClock clock, params (int Milliseconds, byte[] Bytes)[] messages) : IMidiInput
{
    private int _next;
    private volatile bool _isPlayed;

    public string Name => "a test piano";

    internal bool IsClosed { get; private set; }

    /// <summary>Keys in their order, each pressed when the one before was let go.</summary>
    internal static (int, byte[])[] Line(params (int Midi, int Milliseconds)[] keys)
    {
        List<(int, byte[])> messages = [];
        int at = 0;
        foreach ((int midi, int milliseconds) in keys)
        {
            messages.Add((at == 0 ? 0 : 10, [0x90, (byte)midi, 70]));
            messages.Add((milliseconds - 10, [0x80, (byte)midi, 64]));
            at += milliseconds;
        }

        return [.. messages];
    }

    internal void Play() => _isPlayed = true;

    public int Take(Span<byte> bytes)
    {
        if (!_isPlayed || _next == messages.Length)
        {
            return 0;
        }

        (int milliseconds, byte[] message) = messages[_next++];
        clock.MoveTo(clock.Now + TimeSpan.FromMilliseconds(milliseconds));
        message.CopyTo(bytes);
        return message.Length;
    }

    public void Close() => IsClosed = true;
}
