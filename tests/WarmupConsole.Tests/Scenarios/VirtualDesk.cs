using WarmupConsole.App;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Tests.Storage;
using WarmupConsole.Tests.Support;

namespace WarmupConsole.Tests.Scenarios;

/// <summary>A machine in virtual time with a piano that records; today is 2027-02-09.</summary>
internal sealed class VirtualDesk : IDisposable
{
    private readonly TemporaryFolder _settings = new();
    private readonly VirtualClock _clock = new();
    private readonly RecordingPort _port;
    private readonly InProcessPlayer _player;

    internal VirtualDesk()
    {
        _port = new(_clock);
        _player = new(_clock, _ => new(_port, true, "Playing on a test piano."));
        Composition = new()
        {
            Clock = _clock,
            Wall = new VirtualWall(_clock, new(2027, 2, 9)),
            Settings = new SettingsFolder(_settings.Root),
            CurrentFolder = _settings.Root,
            StartPlayer = _ => _player,
        };
    }

    internal Composition Composition { get; }

    /// <summary>The notes given so far.</summary>
    internal IEnumerable<int> Given => _port.Sent.Where(sent => sent.Bytes.Span[0] == 0x90 && sent.Bytes.Span[2] > 0).Select(sent => (int)sent.Bytes.Span[1]);

    /// <summary>Those of them that have not ended.</summary>
    internal IEnumerable<int> Sounding => Given.Except(_port.Sent.Where(sent => sent.Bytes.Span[0] == 0x80 || (sent.Bytes.Span[0] == 0x90 && sent.Bytes.Span[2] == 0)).Select(sent => (int)sent.Bytes.Span[1]));

    internal void Advance(TimeSpan time) => _player.Advance(_clock.Now + time);

    public void Dispose() => _settings.Dispose();
}
