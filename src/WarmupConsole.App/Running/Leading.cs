using System.CommandLine;
using System.Reflection;
using WarmupConsole.App.Commands;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Storage.Yaml;
using WarmupConsole.Tui.Hosting;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.App.Running;

/// <summary>One run from the files to the saved log.</summary>
internal sealed class Leading(Composition composition, InvocationConfiguration surroundings)
{
    private static readonly string Version = Assembly.GetExecutingAssembly().GetName().Version!.ToString(3);

    /// <summary>As often as the start screen is left to edit the plan, and come back to.</summary>
    internal int Run(RunRequest request)
    {
        while (true)
        {
            FileRead<Content> read = request.Open
                ? Content.LoadOpen(composition, request.Choir)
                : Content.Load(composition, request.Plan, request.Choir);
            if (!read.IsGood)
            {
                return Problems.Print(read.Problems, surroundings.Error);
            }

            (int code, bool isPlanAsked) = Lead(read.Value, request);
            if (!isPlanAsked)
            {
                return code;
            }

            (code, string path) = PlanEditing.Run(composition, surroundings, read.Value, request.Port);
            if (code != ExitCodes.Ok)
            {
                return code;
            }

            request = read.Value.IsInFolder
                ? request with { Plan = File.Exists(path) ? path : null, Choir = read.Value.Folder.Root, Resume = false }
                : request with { Plan = null, Resume = false };
        }
    }

    private (int Code, bool IsPlanAsked) Lead(Content content, RunRequest request)
    {
        if (!TerminalHost.HasTerminal)
        {
            surroundings.Error.WriteLine(AppTexts.NoTerminal);
            return (ExitCodes.BadInput, false);
        }

        (LiveOutcome start, RunLog log) = Begin(content, request.Resume);
        PortChoice port = Ports.Choose(composition, request.Port);
        IPlayer player = composition.StartPlayer(request.Files);
        LiveRun run = new(start, composition.Clock, player, port, log);
        run.Host.Exercises = content.Folder.Exercises;
        using NeedsKeeper needs = new(content.Folder, run.Host.Post);
        run.Rehearsed = needs.Keep;
        run.Host.GivesTour = GivesTour(request);
        using Hands hands = new(run.Host, composition.Settings, composition.Clock);
        run.Host.FirstPicture += () =>
        {
            run.OpenPort(); // two processes more would take the processor from the first picture
            Listen(hands, Ports.Listening(composition, request.Port));
            LookAround(content, run.Host);
        };

        log.Thread.Start();
        foreach (FileProblem fault in Ports.Faults(composition))
        {
            run.Host.Post(new LiveInput.Warning(fault.ToString()));
        }

        int code;
        using (SessionLoop loop = new(run.Host, composition.Clock))
        {
            code = TerminalHost.Run(run.Host, () => Close(loop, run));
        }

        KeepTour(run.Host);
        code = new LogRescue(composition, surroundings).AfterRun(log) ? code : ExitCodes.BadInput;
        if (run.TroubleAtEnd is { } trouble)
        {
            surroundings.Error.WriteLine(trouble);
            code = ExitCodes.BadInput;
        }

        if (request.Files.Trace is not null && player.Onsets is { } onsets)
        {
            surroundings.Output.WriteLine(AppTexts.Punctual(onsets));
        }

        return (code, run.Host.IsPlanAsked && code == ExitCodes.Ok);
    }

    private void Listen(Hands hands, PortChoice heard)
    {
        if (heard.Kind == PortChoiceKind.None)
        {
            hands.ListenToNothing(AppTexts.HearsNothing);
        }
        else if (composition.StartEar is { } start)
        {
            hands.Listen(new(() => start(heard), composition.Clock));
        }
    }

    private bool GivesTour(RunRequest request) => request.Tour || (composition.MayGiveTour && !composition.Settings.IsTourSeen);

    /// <summary>Where that fails, the tour is given once more.</summary>
    private void KeepTour(SessionHost host)
    {
        if (host.IsTourOver)
        {
            composition.Settings.KeepTourSeen();
        }
    }

    /// <summary>On a thread of its own: the first picture waits for nothing.</summary>
    private void LookAround(Content content, SessionHost host) =>
        new Thread(() => Look(content, host)) { IsBackground = true, Name = "start" }.Start();

    private void Look(Content content, SessionHost host)
    {
        try
        {
            StartCard card = StartLook.Of(composition, content);
            host.Show(status => status with { Start = card });
        }
#pragma warning disable CA1031 // What only adds to the picture must not end the evening.
        catch (Exception e)
#pragma warning restore CA1031
        {
            composition.Settings.AddDiagnostics(composition.Wall.GetLocalNow(), e.ToString());
        }
    }

    private static void Close(SessionLoop loop, LiveRun run)
    {
        loop.Dispose();
        run.Close();
    }

    private (LiveOutcome Start, RunLog Log) Begin(Content content, bool? resume)
    {
        CutOffRun? cutOff = resume == false
            ? null
            : CutOffRun.Find(content.Folder, Path.GetFileName(content.Plan.Path), composition.Wall.GetLocalNow());
        return cutOff is null ? Anew(content, resume == true ? AppTexts.NothingToResume : null) : Resumed(content, cutOff, resume);
    }

    /// <summary>The run that was cut off, if its log can be had and the director wants it; the log is held before the question is asked.</summary>
    private (LiveOutcome Start, RunLog Log) Resumed(Content content, CutOffRun cutOff, bool? resume)
    {
        OpenedLog opened = SessionLogFile.OpenForResume(cutOff.Path, Environment.MachineName);
        if (!opened.IsOpen)
        {
            return Anew(content, AppTexts.NotResumed(opened.Sentence));
        }

        if (resume == true || Agrees(cutOff.Question()))
        {
            return (LiveMachine.Resume(cutOff.Warmup, cutOff.Facts, composition.Clock.Now, cutOff.Spent), Log(opened, null));
        }

        opened.File.Dispose();
        return Anew(content, null);
    }

    /// <summary>A new run in a new log, with a word to the director when there is one.</summary>
    private (LiveOutcome Start, RunLog Log) Anew(Content content, string? word)
    {
        OpenedLog fresh = SessionLogFile.Create(content.Folder.SessionsFolder, composition.Wall.GetLocalNow(), Environment.MachineName);
        LiveOutcome start = LiveMachine.Start(content.Warmup, composition.Clock.Now);
        LiveSession told = word is null ? start.Session : start.Session with { Notice = new(word, IsTrouble: true, composition.Clock.Now) };
        return (start with { Session = told }, Log(fresh, content));
    }

    private RunLog Log(OpenedLog opened, Content? content) =>
        new(opened, content?.StartRecord(Version), composition.Wall, composition.Clock);

    private bool Agrees(string question)
    {
        if (composition.Answers is not { } answers)
        {
            return false;
        }

        surroundings.Output.Write(question);
        return answers.ReadLine()?.Trim() is "" or "y" or "Y" or "yes";
    }
}
