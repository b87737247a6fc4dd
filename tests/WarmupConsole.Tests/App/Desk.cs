using WarmupConsole.App;
using WarmupConsole.App.Commands;
using WarmupConsole.Midi.Listening;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Tests.Storage;
using WarmupConsole.Tests.Support;

namespace WarmupConsole.Tests.App;

/// <summary>Commands run in a folder of their own, with a piano that records, in virtual time; today is 2027-02-16.</summary>
internal sealed class Desk : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly VirtualClock _clock = new();
    private readonly RecordingPort _port;
    private readonly InProcessPlayer _player;
    private readonly StringWriter _output = new();
    private readonly StringWriter _errors = new();
    private PlayedInput? _listens;

    /// <param name="answers">What is typed, line by line; null when nobody is there.</param>
    internal Desk(params string[]? answers)
    {
        _port = new(_clock);
        _player = new(_clock, choice => choice == PortChoice.None ? new(new NullPort(), true, "Nothing sounds.") : new(_port, true, "Playing on a test piano."));
        Composition = new()
        {
            Clock = _clock,
            Wall = new VirtualWall(_clock, new(2027, 2, 16)),
            Settings = new SettingsFolder(PathOf("settings")),
            CurrentFolder = _folder.Root,
            StartPlayer = _ => _player,
            Listen = _ => Listen(),
            Wait = time => _player.Advance(_clock.Now + time),
            Answers = answers is null ? null : new TakingTime(answers, Pass),
        };
    }

    internal Composition Composition { get; }

    /// <summary>What is heard when a command listens; null when there is no such input.</summary>
    internal PlayedInput? Heard { get; set; }

    internal VirtualClock Clock => _clock;

    internal string Output => _output.ToString();

    internal string Errors => _errors.ToString();

    /// <summary>The MIDI numbers of the notes given so far.</summary>
    internal int[] Given => [.. _port.Sent.Where(sent => sent.Bytes.Span[0] == 0x90 && sent.Bytes.Span[2] > 0).Select(sent => (int)sent.Bytes.Span[1])];

    /// <summary>Note-offs, a note-on at velocity 0 among them.</summary>
    internal int[] Ended => [.. _port.Sent.Where(sent => sent.Bytes.Span[0] is 0x80 || (sent.Bytes.Span[0] == 0x90 && sent.Bytes.Span[2] == 0)).Select(sent => (int)sent.Bytes.Span[1])];

    internal string PathOf(params string[] names) => _folder.PathOf(names);

    internal string Write(string text, params string[] names) => _folder.Write(text, names);

    internal int Run(params string[] arguments) => CommandLine.Run(arguments, Composition, _output, _errors);

    public void Dispose()
    {
        _player.Dispose();
        _folder.Dispose();
    }

    private InputOpening Listen()
    {
        _listens = Heard;
        return Heard is null ? new(null, "Nothing is heard.") : new(Heard, "Listening to a test piano.");
    }

    private void Pass()
    {
        _player.Advance(_clock.Now + TimeSpan.FromSeconds(3));
        _listens?.Play();
        _listens = null;
    }

    /// <summary>A director takes three seconds for each line.</summary>
    private sealed class TakingTime(string[] lines, Action pass) : TextReader
    {
        private int _next;

        public override string? ReadLine()
        {
            pass();
            return _next < lines.Length ? lines[_next++] : null;
        }
    }
}
