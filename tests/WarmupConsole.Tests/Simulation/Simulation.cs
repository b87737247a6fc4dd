using WarmupConsole.App.Running;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.SessionLogs;

namespace WarmupConsole.Tests.Simulation;

/// <summary>
/// One evening from a seed: the real session, log, protocol and player in virtual time, stepped from one due time to the next,
/// with everything around them able to fail. It throws, with the seed and the last events, when a law is broken.
/// </summary>
internal sealed class Simulation
{
    private const int MostTurns = 200_000;

    private readonly Random _random;
    private readonly VirtualClock _clock = new();
    private readonly SimulatedWall _wall;
    private readonly Trail _trail;
    private readonly ScoreModel _score = new();
    private readonly SimulatedPiano _piano;
    private readonly Invariants _invariants;
    private readonly SimulatedDirector _director;
    private readonly Misfortunes _misfortunes;
    private readonly Content _content;
    private SimulatedRun _run;
    private Moment _directorAt;
    private Moment _hostBusyUntil;
    private Moment _logAt;
    private Moment? _reopenAt;
    private int _insisted;

    private Simulation(int seed, Flaw flaw)
    {
        _random = new(seed);
        _clock.MoveTo(new(_random.NextInt64(1_000_000_000_000_000)));
        _wall = new(_clock);
        _trail = new(_clock);
        _piano = new(_score, _clock) { MissesEnds = flaw == Flaw.PianoMissesEnds };
        _invariants = new(_piano, _score);
        _director = new(_random);
        _misfortunes = new(_random, _clock.Now);
        _content = SimulatedPlans.Next(_random);
        _director.PutIn =
        [
            .. _content.Folder.Exercises.Where((_, index) => index % 40 == 0).Select(
                (exercise, index) => new LiveInput.Insert(WarmupBuilder.Alone(_content.Folder.Choir, exercise), ExerciseFile.Write([exercise]), index % 2 == 0)),
        ];
        LiesAboutFlushes = flaw == Flaw.DiskLies;
        _run = NewRun();
        _directorAt = _clock.Now;
    }

    /// <summary>True for a disk that says it has flushed and has not.</summary>
    private bool LiesAboutFlushes { get; }

    /// <summary>Runs one evening.</summary>
    /// <returns>What came of it, for sums.</returns>
    internal static SimulationFigures Run(int seed, Flaw flaw = Flaw.None)
    {
        Simulation? simulation = null;
        try
        {
            simulation = new(seed, flaw);
            simulation.Lead();
            return simulation.Figures;
        }
        catch (Exception e)
        {
            throw new InvalidOperationException($"reproduce with WARMUP_SEED={seed}\n{e.Message}\n{simulation?._trail}", e);
        }
    }

    private SimulationFigures Figures { get; } = new();

    private void Lead()
    {
        for (int turns = 0; _director.HasMore; turns++)
        {
            Law.Holds(turns < MostTurns, "Time stands still", _clock.Now);
            PlayTo(Next());
            TakeTurns();
        }

        Figures.Notes += _score.Heard;
        End();
    }

    /// <summary>The next moment at which anything is due.</summary>
    private Moment Next()
    {
        Moment next = Moment.Earlier(_directorAt, Moment.Earlier(_logAt, _misfortunes.NextAt));
        next = Later(next, _clock.Now);
        foreach (Moment? due in new[] { HostAt(), _reopenAt })
        {
            next = due is { } at ? Moment.Earlier(next, at) : next;
        }

        return next;
    }

    private Moment? HostAt() => (_run.IsWanted ? _clock.Now : _run.Wake) is { } due ? Later(due, _hostBusyUntil) : null;

    /// <summary>Whoever is due gets a turn; who comes first at one moment is left to chance.</summary>
    private void TakeTurns()
    {
        int first = _random.Next(4);
        for (int i = 0; i < 4; i++)
        {
            TakeTurn((first + i) % 4);
            PlayTo(_clock.Now);
        }
    }

    private void PlayTo(Moment moment)
    {
        if (_run.Player.PassTo(moment))
        {
            _invariants.InQuiet(_run.Session);
        }
    }

    private void TakeTurn(int who)
    {
        Moment now = _clock.Now;
        if (who == 0 && HostAt() <= now)
        {
            StepHost();
        }
        else if (who == 1 && _logAt <= now)
        {
            Drain();
        }
        else if (who == 2 && _directorAt <= now)
        {
            Direct();
        }
        else if (who == 3)
        {
            Suffer(now);
        }
    }

    private void StepHost()
    {
        LiveSession before = _run.Session;
        _run.StepHost();
        _invariants.AfterHost(_run.Session, _clock.Now, _insisted);
        _invariants.Timers(_run.Session, _clock.Now);
        _insisted = 0;
        if (!ReferenceEquals(before, _run.Session))
        {
            _trail.Add("session", _run.Session.State);
            _logAt = Moment.Earlier(_logAt, _clock.Now + _misfortunes.DiskDelay());
        }
    }

    private void Drain()
    {
        _run.DrainLog();
        _logAt = _clock.Now + TimeSpan.FromSeconds(1);
    }

    private void Direct()
    {
        if (_director.Next(_run.Session, _clock.Now) is { } input)
        {
            _trail.Add("director", input);
            _insisted += input switch
            {
                LiveInput.Act { Action: LiveAction.OneMoreKey } => 1,
                LiveInput.JumpTo or LiveInput.Sing => Invariants.AnyKey,
                _ => 0,
            };
            _run.Live.Host.Post(input);
            Figures.Inputs++;
        }

        _directorAt = _clock.Now + _director.NextGap();
    }

    private void Suffer(Moment now)
    {
        if (_reopenAt <= now)
        {
            Reopen();
        }

        if (_misfortunes.NextAt <= now)
        {
            Misfortune happened = _misfortunes.Take(now);
            _trail.Add("misfortune", happened);
            Befall(happened);
            Figures.Misfortunes++;
        }
    }

    private void Befall(Misfortune happened)
    {
        switch (happened)
        {
            case Misfortune.CablePulled or Misfortune.PianoSwitchedOff or Misfortune.PianoBack:
                BefallPiano(happened);
                break;
            case Misfortune.WallForwards or Misfortune.WallBackwards:
                _wall.Step((happened == Misfortune.WallForwards ? 1 : -1) * TimeSpan.FromMinutes(_random.Next(1, 120)));
                break;
            case Misfortune.Suspended:
                Suspend();
                break;
            case Misfortune.HostBusy:
                _hostBusyUntil = _clock.Now + TimeSpan.FromMilliseconds(_random.Next(500));
                break;
            case Misfortune.PlayerLate:
                _run.Player.BeLate(TimeSpan.FromMilliseconds(_random.Next(500)));
                break;
            case Misfortune.PlayerDies or Misfortune.PlayerKilled:
                _run.Player.Die(killed: happened == Misfortune.PlayerKilled);
                ReopenIn(3000);
                break;
            case Misfortune.ConsoleKilled or Misfortune.PowerCut:
                Cut(isPower: happened == Misfortune.PowerCut);
                break;
            default:
                _misfortunes.Befall(happened, _run.File);
                break;
        }
    }

    private void BefallPiano(Misfortune happened)
    {
        if (happened == Misfortune.PianoBack)
        {
            _piano.Return();
        }
        else
        {
            _piano.Vanish(losesPower: happened == Misfortune.PianoSwitchedOff);
        }

        ReopenIn(1000);
    }

    private void ReopenIn(int milliseconds) => _reopenAt = _clock.Now + TimeSpan.FromMilliseconds(_random.Next(milliseconds));

    /// <summary>What watches over port and player: starts the player again, and opens the port when it is back.</summary>
    private void Reopen()
    {
        _reopenAt = null;
        if (_run.Player.IsDead)
        {
            _run.Player.StartAgain();
        }
        else if (_piano.IsThere)
        {
            _run.Player.Reopen();
        }
    }

    /// <summary>The lid is closed: nobody gets a turn, and the monotonic clock goes on as it does on some systems.</summary>
    private void Suspend()
    {
        bool wasRunning = _run.Session.NextWake is not null && !_run.IsWanted;
        _clock.MoveTo(_clock.Now + TimeSpan.FromMinutes(1 + _random.Next(20)));
        if (wasRunning && _random.Next(2) == 0)
        {
            StepHost();
            Law.Holds(_run.Session.Hold != Hold.None, "What was slept through was gone on with", _run.Session.State);
        }
    }

    /// <summary>The process or the whole machine is gone at once; then it is started again with what is left of the log.</summary>
    private void Cut(bool isPower)
    {
        LiveMark[] confirmed = [.. _run.Session.Marks.Where(mark => mark.IsFlushed)];
        if (!isPower)
        {
            _run.Player.Dispose();
            Law.Holds(_score.IsDeaf || _piano.Sounding.Count == 0, "It sounds on without a console", _piano);
        }

        int kept = isPower ? _random.Next(_run.File.Durable, _run.File.Held.Length + 1) : _run.File.Held.Length;
        _run.File.Restart(kept);
        _clock.MoveTo(_clock.Now + TimeSpan.FromSeconds(_random.Next(100)));
        _score.Reset();
        _piano.Return();
        _invariants.Restarted();
        (_hostBusyUntil, _logAt, _reopenAt, _insisted) = (_clock.Now, _clock.Now, null, 0);
        GoOn(confirmed);
    }

    /// <summary>As a start of the console does: the log decides whether there is a run to go on with.</summary>
    private void GoOn(LiveMark[] confirmed)
    {
        byte[] bytes = _run.File.Bytes;
        SessionLog log = SessionLogReader.Read(bytes);
        Law.Holds(log.Damages.All(damage => damage.IsNormal), "A cut damaged what was written before", log.Damages.FirstOrDefault(damage => !damage.IsNormal));
        SessionFacts facts = SessionFacts.Fold(log.Records.Select(record => record.Event));
        Invariants.Survived(confirmed, facts);
        bool isRefused = ResumeTable.IsRefusal(ResumeTable.Decide(LogCondition.Of(log)));
        if (isRefused || CutOffRun.Rebuild("log", log, log.Start!) is not { } cutOff)
        {
            _run = NewRun();
            return;
        }

        LiveOutcome resumed = LiveMachine.Resume(cutOff.Warmup, cutOff.Facts, _clock.Now, cutOff.Spent);
        Invariants.GoesOn(facts, resumed);
        _run = new(resumed, (_clock, _wall), new(_clock, _piano, _score), _run.File, (LogPosition.After(log, bytes), null));
        Figures.Resumed++;
    }

    private SimulatedRun NewRun() => new(
        LiveMachine.Start(_content.Warmup, _clock.Now),
        (_clock, _wall),
        new(_clock, _piano, _score),
        new() { Lies = LiesAboutFlushes },
        (LogPosition.New, _content.StartRecord("0.1.0")));

    /// <summary>The director leaves: silence first, then the log, whole.</summary>
    private void End()
    {
        _run.File.Restart(_run.File.Held.Length);
        _run.StepHost();
        _run.LogThread.Drain();
        _run.StepHost();
        Law.Holds(_run.Session.Marks.All(mark => mark.IsFlushed), "A mark on disk is not confirmed", _run.Session.Marks.FirstOrDefault(mark => !mark.IsFlushed));
        _run.Live.Close();
        Law.Holds(_score.IsDeaf || _piano.Sounding.Count == 0, "It sounds on after the end", _piano);
        _run.Mirror.Follow();
        Law.Holds(LogMirror.AreSame(_run.Mirror.Facts, _run.Session.Facts()), "The closed log does not fold to what was shown");
        SessionLog log = SessionLogReader.Read(_run.File.Held);
        Law.Holds(log.Damages.All(damage => damage.IsNormal), "The log is damaged", log.Damages.Count);
        Law.Holds(_misfortunes.HaveTouchedLog || log.Damages.Count == 0, "A healthy log is damaged", log.Damages.Count);
        Figures.Records += log.Records.Count;
    }

    private static Moment Later(Moment a, Moment b) => a > b ? a : b;
}
