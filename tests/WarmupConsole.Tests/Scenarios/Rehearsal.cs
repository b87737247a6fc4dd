using System.Globalization;
using System.Text;
using Terminal.Gui.Input;
using WarmupConsole.App;
using WarmupConsole.App.Running;
using WarmupConsole.Midi.Listening;
using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Tests.Architecture;
using WarmupConsole.Tests.Storage;
using WarmupConsole.Tests.Support;
using WarmupConsole.Tui.Keys;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tests.Scenarios;

/// <summary>
/// The whole console in virtual time: real files, host, log and window, and the real player engine on a recording port. Keys go
/// in by what they do; screen text, MIDI bytes and the session log come out.
/// </summary>
internal sealed class Rehearsal : IDisposable
{
    private static readonly TimeSpan WayBack = TimeSpan.FromMilliseconds(30);

    private readonly TemporaryFolder _folder = new();
    private readonly InProcessPlayer _player;
    private readonly RecordingPort _port;
    private readonly RunLog _log;
    private readonly MessageAssembler _assembler = new();
    private readonly LiveRun _run;
    private readonly ConsoleWindow _window;
    private readonly Headless _screen;

    /// <param name="plan">A plan of plans-demo, by its file name; or any, by its whole path.</param>
    /// <param name="hasPort">False for a run where no port is found.</param>
    /// <param name="canLog">False for a folder that cannot be written to.</param>
    /// <param name="isOpen">True for a run without a plan.</param>
    /// <param name="width">Columns of the screen.</param>
    /// <param name="height">Rows of the screen.</param>
    internal Rehearsal(string plan = "2027-02-09.yaml", bool hasPort = true, bool canLog = true, bool isOpen = false, int width = 120, int height = 36)
    {
        _port = new(Clock);
        _player = new(Clock, choice => hasPort ? new(_port, true, "Playing on a test piano.") : new(new NullPort(), true, "Nothing sounds: no port."));
        Composition = new()
        {
            Clock = Clock,
            Wall = new VirtualWall(Clock, DateOnly.ParseExact(Path.GetFileName(plan)[..10], "yyyy-MM-dd", CultureInfo.InvariantCulture)),
            Settings = new SettingsFolder(_folder.Root),
            CurrentFolder = _folder.Root,
            StartPlayer = _ => _player,
        };
        string demo = Path.Combine(Repository.Root, "plans-demo");
        Content = (isOpen ? Content.LoadOpen(Composition, demo) : Content.Load(Composition, Path.Combine(demo, "plans", plan), null)).Value!;
        OpenedLog opened = canLog
            ? SessionLogFile.Create(Content.Folder.SessionsFolder, Composition.Wall.GetLocalNow(), "test")
            : new(null, "the disk is read-only");
        _log = new(opened, Content.StartRecord("test"), Composition.Wall, Clock);
        _run = new(LiveMachine.Start(Content.Warmup, Clock.Now), Clock, _player, PortChoice.First, _log);
        _run.Host.FirstPicture += _run.OpenPort;
        _run.Host.Exercises = Content.Folder.Exercises;
        NeedsKeeper needs = new(Content.Folder, _run.Host.Post);
        _run.Rehearsed = mark => _run.Host.Post(needs.Write(mark));
        Hands = new(_run.Host, Composition.Settings, Clock);
        _window = new(_run.Host);
        _screen = new(_window, width, height);
        Settle();
    }

    internal VirtualClock Clock { get; } = new();

    internal Composition Composition { get; }

    internal Content Content { get; }

    /// <summary>Pedals and played keys.</summary>
    internal Hands Hands { get; }

    /// <summary>True while the piano sends back whatever it is sent.</summary>
    internal bool Loops { get; set; }

    internal LiveSession Session => _run.Host.Session;

    internal string Screen => _screen.Screen;

    /// <summary>Everything sent to the port so far.</summary>
    internal IReadOnlyList<TimedMessage> Sent => _port.Sent;

    internal SessionLogThread LogThread => _log.Thread;

    internal bool IsUnsaved => _log.IsUnsaved;

    internal string? LogPath => _log.Path;

    /// <summary>The log as it lies on disk now.</summary>
    internal IReadOnlyList<SessionRecord> Logged => SessionLogFile.Read(_log.Path!).Value!.Records;

    /// <summary>The notes that sound now, by what was sent.</summary>
    internal IReadOnlySet<int> Sounding
    {
        get
        {
            HashSet<int> notes = [];
            foreach (byte[] message in Sent.Select(sent => sent.Bytes.ToArray()))
            {
                _ = (message[0] & 0xF0, message.Length > 2 ? message[2] : 0) switch
                {
                    (0x90, > 0) => notes.Add(message[1]),
                    (0x80, _) or (0x90, 0) => notes.Remove(message[1]),
                    _ => false,
                };
            }

            return notes;
        }
    }

    /// <summary>Presses the key that does this, whichever it is.</summary>
    internal Rehearsal Do(LiveAction action)
    {
        KeyRow row = KeyTable.Rows.First(row => row.Action == action);
        return Press(row.Strokes[0]);
    }

    internal Rehearsal Do(ScreenCommand command) => Press(KeyTable.Rows.First(row => row.Command == command).Strokes[0]);

    internal Rehearsal Do(KeyRow row) => Press(row.Strokes[0]);

    internal Rehearsal Type(string text)
    {
        foreach (Rune rune in text.EnumerateRunes())
        {
            _screen.Press(new Key(rune.Value));
            Settle();
        }

        return this;
    }

    /// <summary>Changes what is shown beside the session.</summary>
    internal Rehearsal Show(Func<ConsoleStatus, ConsoleStatus> change)
    {
        _run.Host.Show(change);
        return Settle();
    }

    /// <summary>The bytes come from the piano.</summary>
    internal Rehearsal Hear(params byte[] bytes)
    {
        foreach (MidiMessage message in bytes.Select(next => _assembler.Take(next)).OfType<MidiMessage>())
        {
            Hands.Hear(message);
            Settle();
        }

        _screen.Advance(TimeSpan.FromMilliseconds(40));
        return Settle();
    }

    /// <summary>A pedal is trodden on and let go.</summary>
    internal Rehearsal Tread(byte controller) => Hear(0xB0, controller, 127).Pass(TimeSpan.FromMilliseconds(300)).Hear(0xB0, controller, 0).Pass(TimeSpan.FromMilliseconds(300));

    /// <summary>Notes are played one after another, a third of a second each.</summary>
    internal Rehearsal Play(params IEnumerable<int> notes)
    {
        foreach (int midi in notes)
        {
            Hear(0x90, (byte)midi, 64).Pass(TimeSpan.FromMilliseconds(330)).Hear(0x80, (byte)midi, 64);
        }

        return this;
    }

    /// <summary>Lets time pass, from one due moment to the next.</summary>
    internal Rehearsal Pass(TimeSpan time)
    {
        Moment end = Clock.Now + time;
        while (Clock.Now < end)
        {
            Moment next = _run.Host.Step() is { } due ? Moment.Earlier(due, end) : end;
            next = Loops ? Moment.Earlier(next, Clock.Now + WayBack) : next;
            int sent = Sent.Count;
            _player.Advance(next);
            Settle();
            SendBack(sent);
        }

        _screen.Advance(TimeSpan.FromMilliseconds(40));
        return this;
    }

    private void SendBack(int from)
    {
        foreach (TimedMessage sent in Loops ? Sent.Skip(from).ToArray() : [])
        {
            if (MidiMessage.TryDecode(sent.Bytes.Span, out MidiMessage message) && message.Kind != MidiMessageKind.ProgramChange)
            {
                Hands.Hear(message);
                Settle();
            }
        }
    }

    /// <summary>Lets time pass until something is so, looking ten times a second; fails after a long while.</summary>
    internal Rehearsal Until(Func<LiveSession, bool> isSo)
    {
        for (int tenths = 0; !isSo(Session); tenths++)
        {
            Assert.True(tenths < 6000, $"It did not come to that in ten minutes; the session is in {Session.State}, step {Session.StepIndex + 1}.");
            Pass(TimeSpan.FromMilliseconds(100));
        }

        return this;
    }

    /// <summary>Leads a step to its end, looking once a second: what comes after it waits for the director.</summary>
    internal Rehearsal LeadToItsEnd() => Do(LiveAction.GoOn).RestOfStep();

    /// <summary>Goes on to the end of a step that has begun.</summary>
    internal Rehearsal RestOfStep()
    {
        int step = Session.StepIndex;
        return Lead(() => Session.StepIndex != step || Session.State == LiveState.Finished);
    }

    /// <summary>Goes on, from key to key where the plan waits for that, until a rung of the step is sung.</summary>
    internal Rehearsal LeadToRung(int index) => Lead(() => Session.RungIndex == index && Session.State == LiveState.Rung);

    private Rehearsal Lead(Func<bool> isThere)
    {
        while (!isThere())
        {
            Pass(TimeSpan.FromSeconds(1));
            if (Session.State == LiveState.Wait)
            {
                Do(LiveAction.GoOn);
            }
        }

        return this;
    }

    /// <summary>Goes to a step by its number on screen and starts it.</summary>
    internal Rehearsal LeadStep(int number)
    {
        if (Session.State == LiveState.Ready)
        {
            Do(LiveAction.GoOn);
        }

        while (Session.StepIndex < number - 1)
        {
            Do(LiveAction.StepOn);
        }

        return Do(LiveAction.GoOn);
    }

    public void Dispose()
    {
        _screen.Dispose();
        _window.Dispose();
        Hands.Dispose();
        _run.Close();
        _folder.Dispose();
    }

    private Rehearsal Press(string stroke)
    {
        _screen.Press(stroke.Length == 1 ? new Key(stroke[0]) : Named(stroke));
        return Settle();
    }

    private static Key Named(string stroke) =>
        Key.TryParse(stroke, out Key? key) ? key : throw new ArgumentException($"{stroke} is no key.", nameof(stroke));

    /// <summary>What the host's and the log's threads would do at once.</summary>
    private Rehearsal Settle()
    {
        _run.Host.Step();
        _log.Thread.Drain();
        _run.Host.Step();
        _screen.Pump();
        return this;
    }
}
