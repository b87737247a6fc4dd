using WarmupConsole.Midi.Ports;

namespace WarmupConsole.Tests.Support;

/// <summary>A port that works or not, as told.</summary>
internal sealed class FlakyPort : IMidiPort
{
    internal bool Works { get; set; } = true;

    internal string? Trouble { get; init; }

    internal int TimesClosed { get; private set; }

    public string Name => "flaky";

    public bool Send(ReadOnlySpan<byte> message) => Works;

    public string? Close()
    {
        TimesClosed++;
        return Trouble;
    }
}
