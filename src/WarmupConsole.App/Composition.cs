using System.Diagnostics;
using System.Globalization;
using WarmupConsole.App.Commands;
using WarmupConsole.Midi.Files;
using WarmupConsole.Midi.Listening;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Sound;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Storage.Folders;

namespace WarmupConsole.App;

/// <summary>
/// What the program takes from the machine: clocks, folders, the piano. Chosen here and nowhere else, so that tests can
/// choose differently.
/// </summary>
internal sealed record Composition
{
    /// <summary>For playing and measuring.</summary>
    public required IMonotonicClock Clock { get; init; }

    /// <summary>For dates and flushing.</summary>
    public required TimeProvider Wall { get; init; }

    /// <summary>The day it is, for plans and ranges.</summary>
    public DateOnly Today => DateOnly.FromDateTime(Wall.GetLocalNow().DateTime);

    public required SettingsFolder Settings { get; init; }

    /// <summary>Which folder a command without a path looks in.</summary>
    public required string CurrentFolder { get; init; }

    /// <summary>Starts a piano that also keeps the files named; its port is opened by whoever listens to its reports.</summary>
    public required Func<PlayerFiles, IPlayer> StartPlayer { get; init; }

    /// <summary>What sounds without any device.</summary>
    public Func<SoundOutlook> BuiltIn { get; init; } = BuiltInSound.Outlook;

    /// <summary>Opens an input that a piano can be heard on.</summary>
    public Func<PortChoice, InputOpening> Listen { get; init; } = MidiInputs.Open;

    /// <summary>Starts listening to an input in a process of its own; null where nothing can be heard.</summary>
    public Func<PortChoice, EarClient>? StartEar { get; init; }

    /// <summary>Lets time pass while music plays.</summary>
    public Action<TimeSpan> Wait { get; init; } = Pass;

    /// <summary>True where somebody may be new to the console: not in tests, and not where a machine runs it.</summary>
    public bool MayGiveTour { get; init; }

    /// <summary>Where answers come from, or null when nobody is there to answer.</summary>
    public TextReader? Answers { get; init; }

    private static SystemMonotonicClock SystemClock { get; } = new();

    private static SettingsFolder MachineFolder { get; } = SettingsFolder.Locate(Environment.GetEnvironmentVariable, OperatingSystem.IsWindows());

    internal static Composition OfThisMachine() => new()
    {
        Clock = SystemClock,
        Wall = TimeProvider.System,
        Settings = MachineFolder,
        CurrentFolder = Environment.CurrentDirectory,
        StartPlayer = StartChild,
        MayGiveTour = string.IsNullOrEmpty(Environment.GetEnvironmentVariable("CI")),
        StartEar = choice => new(new ChildPlayer(EarCommandFor(choice))),
        Answers = Console.IsInputRedirected ? null : Console.In,
    };

    private static RestartingPlayer StartChild(PlayerFiles files)
    {
        PlayerFiles tuned = files with { A4Hertz = MachineFolder.ReadSettings().Value?.A4Hertz };
        return new(before => new PlayerClient(new ChildPlayer(ChildCommand(tuned.After(before)))), SystemClock);
    }

    private static void Pass(TimeSpan time)
    {
        using ManualResetEventSlim never = new();
        never.Wait(time);
    }

    /// <summary>The child's main: owns the port until its input ends.</summary>
    internal static int RunPlayer(PlayerFiles files)
    {
        using IWaiter waiter = Waiters.ForThisMachine(SystemClock);
        Waiters.TryPrecede();
        return PlayerProcess.Run(Console.OpenStandardInput(), FrameOutput.Take(), choice => Open(choice, files, waiter), waiter);
    }

    /// <summary>The listening child's main.</summary>
    internal static int RunEar(PortChoice choice) => EarProcess.Run(Console.OpenStandardInput(), FrameOutput.Take(), () => MidiInputs.Open(choice), SystemClock);

    private static PortOpening Open(PortChoice choice, PlayerFiles files, IMonotonicClock clock)
    {
        PortOpening opening = MidiPorts.Open(choice, files.A4Hertz is { } hertz ? Tuning.FromA4Hertz(hertz) : null);
        opening = files.Recording is { } recording ? Keeping(opening, FileRecorder.Smf(recording, clock)) : opening;
        return files.Trace is { } trace ? Keeping(opening, FileRecorder.Trace(trace, clock)) : opening;
    }

    private static PortOpening Keeping(PortOpening opening, FileRecorder recorder) => recorder.TryPlace() is { } trouble
        ? opening with { AsWanted = false, Sentence = $"{opening.Sentence} {trouble}" }
        : opening with { Port = new TeePort(opening.Port, recorder), Sentence = AppTexts.AndRecording(opening.Sentence, recorder.Name) };

    // Started from its own file, or, as "dotnet warmup.dll", by the runtime that runs it now.
    private static ProcessStartInfo Self(string name)
    {
        string self = Environment.ProcessPath ?? throw new InvalidOperationException("The program's own path is not known.");
        ProcessStartInfo command = new(self);
        if (Path.GetFileNameWithoutExtension(self) == "dotnet")
        {
            command.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "warmup.dll"));
        }

        command.ArgumentList.Add(name);
        return command;
    }

    private static ProcessStartInfo EarCommandFor(PortChoice choice)
    {
        ProcessStartInfo command = Self(EarCommand.Name);
        if (choice.Kind == PortChoiceKind.Named)
        {
            command.ArgumentList.Add(EarCommand.InputOption);
            command.ArgumentList.Add(choice.Name);
        }

        return command;
    }

    private static ProcessStartInfo ChildCommand(PlayerFiles files)
    {
        ProcessStartInfo command = Self(PlayerCommand.Name);
        if (files.A4Hertz is { } hertz)
        {
            command.ArgumentList.Add(PlayerCommand.TuningOption);
            command.ArgumentList.Add(hertz.ToString(CultureInfo.InvariantCulture));
        }

        foreach ((string option, string? path) in (IEnumerable<(string, string?)>)[(PlayerCommand.RecordOption, files.Recording), (PlayerCommand.TraceOption, files.Trace)])
        {
            if (path is not null)
            {
                command.ArgumentList.Add(option);
                command.ArgumentList.Add(Path.GetFullPath(path));
            }
        }

        return command;
    }
}
