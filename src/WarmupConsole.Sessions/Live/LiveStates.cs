using Stateless;
using Stateless.Graph;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Live;

/// <summary>
/// The table of states and transitions. The state itself lives in the session of the turn; so one table, made once for a thread,
/// serves every session (making it costs more than everything it does).
/// </summary>
internal sealed class LiveStates
{
    private static readonly LiveState[] KeyStates = [LiveState.Cue, LiveState.CountIn, LiveState.Rung, LiveState.Breath, LiveState.Wait];

    [ThreadStatic]
    private static LiveStates? ofThread;

    private readonly StateMachine<LiveState, LiveTrigger> machine;
    private readonly LiveTurn turn = new();
    private readonly LiveHolds holds;
    private readonly LiveTempo tempo;
    private readonly LiveLadder ladder;
    private readonly LiveVoices voices;
    private readonly LiveChords chords;
    private readonly LiveBreath breath;
    private readonly LivePiano piano;
    private readonly LiveCuts cuts;
    private readonly LiveFollow follow;
    private readonly RungLeading rungs;
    private readonly StepLeading steps;

    private LiveStates(LiveSession first)
    {
        turn.Begin(first, default);
        holds = new(turn);
        tempo = new(turn);
        ladder = new(turn);
        voices = new(turn);
        chords = new(turn, holds);
        breath = new(turn);
        piano = new(turn);
        cuts = new(turn);
        follow = new(turn, holds, tempo, voices);
        rungs = new(turn, holds, tempo, voices, chords);
        steps = new(turn, holds);
        machine = new(() => turn.Session.State, state => turn.Session = turn.Session with { State = state });
        ConfigureReady();
        ConfigureIntroduce();
        foreach (LiveState state in KeyStates)
        {
            ConfigureKeys(state);
        }

        ConfigureCourseOfKeys();
        ConfigureFollow();
        ConfigurePhase();
        ConfigureFinished();
    }

    public LiveTurn Turn => turn;

    /// <summary>The table, set to a session at a moment.</summary>
    public static LiveStates At(LiveSession session, Moment now)
    {
        LiveStates states = ofThread ??= new(session);
        states.turn.Begin(session, now);
        return states;
    }

    /// <summary>Lets everything happen, in order, that was due up to a moment; however late the caller is, beats stay where they were.</summary>
    public void Advance(Moment now)
    {
        while (turn.Session.NextWake is { } due && due <= now)
        {
            turn.Now = due;
            machine.Fire(turn.Session.CueAt is null ? LiveTrigger.TimeElapsed : LiveTrigger.CueDue);
        }

        turn.Now = now;
    }

    /// <summary>What was given by hand ends with whatever moves on.</summary>
    public void Fire(LiveAction action)
    {
        if (turn.Session.Sounded is not null && MovesOn(action))
        {
            turn.Silence();
        }

        machine.Fire((LiveTrigger)action);
    }

    /// <summary>A note of the piano: where it completes a key, the session moves there.</summary>
    public void Hear(int midi)
    {
        if (follow.Hear(midi) is { } tonic)
        {
            if (turn.Session.Sounded is not null)
            {
                turn.Silence();
            }

            turn.Asked = new LiveInput.JumpTo(tonic);
            machine.Fire(LiveTrigger.KeyHeard);
        }
    }

    private bool MovesOn(LiveAction action) =>
        action is LiveAction.GoOn or LiveAction.Pause or LiveAction.Repeat or LiveAction.StepBack or LiveAction.StepOn or LiveAction.JumpToKey or LiveAction.InsertNow or LiveAction.Follow or LiveAction.End
        || (action, turn.Session.State) is (LiveAction.RollOrWait, LiveState.Wait);

    /// <summary>Why an action would do nothing, or null when it would act.</summary>
    public string? WhyNot(LiveAction action)
    {
        if (machine.CanFire((LiveTrigger)action, out ICollection<string>? unmet))
        {
            return null;
        }

        return turn.Session is { State: LiveState.Introduce, Step: null } ? LiveTexts.NoPlan
            : unmet is not { Count: > 0 } ? LiveTexts.NotIn(turn.Session.State, action)
            : LiveCuts.WhyNone(turn.Session, turn.Now) is { } reason && action == LiveAction.TakeCut ? reason
            : LiveGuards.RefusalFor(unmet.Last());
    }

    /// <summary>The moves between states; what stays in a state would only cover them up.</summary>
    public string Graph() => string.Join('\n', MermaidGraph.Format(machine.GetInfo()).ReplaceLineEndings("\n").Split('\n').Where(line => !Stays(line)));

    private void ConfigureReady()
    {
        To(LiveState.Ready, LiveTrigger.GoOn, LiveState.Introduce);
        To(LiveState.Ready, LiveTrigger.End, LiveState.Finished);
        ConfigureInsert(LiveState.Ready);
        Stay(LiveState.Ready, LiveTrigger.Silence, LiveGuards.Always, holds.Silence);
        Stay(LiveState.Ready, LiveTrigger.RollOrWait, LiveGuards.Always, RollOrWait);
        Stay(LiveState.Ready, LiveTrigger.Follow, LiveGuards.Always, follow.Toggle);
        machine.Configure(LiveState.Ready)
            .Ignore(LiveTrigger.TimeElapsed)
            .Ignore(LiveTrigger.CueDue);
    }

    private void ConfigureIntroduce()
    {
        const LiveState state = LiveState.Introduce;
        ConfigureStepChanges(state);
        Stay(state, LiveTrigger.GoOn, LiveGuards.Held, holds.Release);
        To(state, LiveTrigger.GoOn, LiveState.Cue, LiveGuards.NotHeld, LiveGuards.HasKeys, LiveGuards.Leads);
        To(state, LiveTrigger.GoOn, LiveState.Follow, LiveGuards.NotHeld, LiveGuards.HasKeys, LiveGuards.Follows);
        To(state, LiveTrigger.KeyHeard, LiveState.Follow);
        Stay(state, LiveTrigger.Follow, LiveGuards.Always, follow.Toggle);
        To(state, LiveTrigger.GoOn, LiveState.Phase, LiveGuards.NotHeld, LiveGuards.HasPhases);
        To(state, LiveTrigger.GoOn, LiveState.Introduce, LiveGuards.NotHeld, LiveGuards.HasNothing, LiveGuards.NextStep);
        To(state, LiveTrigger.GoOn, LiveState.Finished, LiveGuards.NotHeld, LiveGuards.HasNothing, LiveGuards.LastStep);
        Stay(state, LiveTrigger.Pause, LiveGuards.Held, holds.Release);
        Stay(state, LiveTrigger.Pause, LiveGuards.NotHeld, holds.Pause);
        Stay(state, LiveTrigger.RollOrWait, LiveGuards.Always, RollOrWait);
        Stay(state, LiveTrigger.CueAgain, LiveGuards.HasRungs, chords.GiveCue);
        Stay(state, LiveTrigger.ProofNote, LiveGuards.HasRungs, chords.Prove);
        Stay(state, LiveTrigger.JumpToKey, LiveGuards.HasRungs, () => voices.Jump(((LiveInput.JumpTo)turn.Asked!).Tonic, isUnsung: true));
        ConfigureByHand(state);
        machine.Configure(state)
            .OnEntry(steps.Introduce)
            .Ignore(LiveTrigger.TimeElapsed)
            .Ignore(LiveTrigger.CueDue);
    }

    private void ConfigureKeys(LiveState state)
    {
        ConfigureStepChanges(state);
        To(state, LiveTrigger.GoOn, LiveState.Cue, LiveGuards.Held);
        To(state, LiveTrigger.Pause, LiveState.Cue, LiveGuards.Paused);
        Stay(state, LiveTrigger.Pause, LiveGuards.NotPaused, holds.Pause);
        To(state, LiveTrigger.Repeat, LiveState.Cue);
        Stay(state, LiveTrigger.TurnRound, LiveGuards.CanTurn, ladder.TurnRound);
        Stay(state, LiveTrigger.OneMoreKey, LiveGuards.Always, ladder.OneMoreKey);
        To(state, LiveTrigger.JumpToKey, LiveState.Cue);
        To(state, LiveTrigger.Follow, LiveState.Follow);
        ConfigureByHand(state);
        ConfigureCueAgain(state);
        if (state != LiveState.Wait)
        {
            Stay(state, LiveTrigger.RollOrWait, LiveGuards.Always, RollOrWait);
            IgnoreIfHeld(state, LiveTrigger.TimeElapsed);
        }

        if (state != LiveState.Rung)
        {
            machine.Configure(state).Ignore(LiveTrigger.CueDue);
        }
    }

    /// <summary>Where beats run the cue leads in again; where none do, the chord alone sounds.</summary>
    private void ConfigureCueAgain(LiveState state)
    {
        if (state == LiveState.Wait)
        {
            Stay(state, LiveTrigger.CueAgain, LiveGuards.Always, chords.GiveCue);
        }
        else
        {
            To(state, LiveTrigger.CueAgain, LiveState.Cue, LiveGuards.NotHeld);
            Stay(state, LiveTrigger.CueAgain, LiveGuards.Held, chords.GiveCue);
        }

        Stay(state, LiveTrigger.ProofNote, state == LiveState.Breath ? LiveGuards.NotLeading : LiveGuards.Always, chords.Prove);
    }

    /// <summary>What changes a ladder or sounds beside it, the same before the keys and in them.</summary>
    private void ConfigureByHand(LiveState state)
    {
        Stay(state, LiveTrigger.LongerBreath, LiveGuards.CanBreatheLonger, breath.Longer);
        Stay(state, LiveTrigger.ShorterBreath, LiveGuards.CanBreatheShorter, breath.Shorter);
        Stay(state, LiveTrigger.HoldChord, LiveGuards.HasRungs, chords.HoldOrRelease);
        Stay(state, LiveTrigger.BuildChord, LiveGuards.HasRungs, chords.Build);
        Stay(state, LiveTrigger.Accompany, LiveGuards.HasSong, () => piano.Change(((LiveInput.Accompany)turn.Asked!).Style));
        Stay(state, LiveTrigger.ChooseParts, LiveGuards.HasRungs, () => voices.Choose(((LiveInput.Sing)turn.Asked!).PartIds));
        Stay(state, LiveTrigger.SwapOctave, LiveGuards.HasRungs, () => voices.Swap(((LiveInput.SwapOctave)turn.Asked!).PartId));
    }

    private void ConfigureCourseOfKeys()
    {
        machine.Configure(LiveState.Cue).OnEntry(Cue);
        machine.Configure(LiveState.CountIn).OnEntry(rungs.CountIn);
        machine.Configure(LiveState.Rung).OnEntry(rungs.Start).OnExit(rungs.Leave);
        machine.Configure(LiveState.Breath).OnEntry(rungs.Breathe);
        machine.Configure(LiveState.Wait).OnEntry(rungs.Wait);
        To(LiveState.Cue, LiveTrigger.TimeElapsed, LiveState.CountIn, LiveGuards.NotHeld);
        To(LiveState.CountIn, LiveTrigger.TimeElapsed, LiveState.Rung, LiveGuards.NotHeld);
        To(LiveState.Rung, LiveTrigger.TimeElapsed, LiveState.Breath, LiveGuards.NotHeld, LiveGuards.NextKey, LiveGuards.Rolls);
        To(LiveState.Rung, LiveTrigger.TimeElapsed, LiveState.Wait, LiveGuards.NotHeld, LiveGuards.NextKey, LiveGuards.Waits);
        To(LiveState.Rung, LiveTrigger.TimeElapsed, LiveState.Introduce, LiveGuards.NotHeld, LiveGuards.LastKey, LiveGuards.NextStep);
        To(LiveState.Rung, LiveTrigger.TimeElapsed, LiveState.Finished, LiveGuards.NotHeld, LiveGuards.LastKey, LiveGuards.LastStep);
        To(LiveState.Breath, LiveTrigger.TimeElapsed, LiveState.Rung, LiveGuards.NotHeld);
        IgnoreIfHeld(LiveState.Rung, LiveTrigger.CueDue);
        Stay(LiveState.Rung, LiveTrigger.CueDue, LiveGuards.NotHeld, rungs.CueNextKey);
        ConfigureWait();
    }

    private void ConfigureWait()
    {
        foreach (LiveTrigger trigger in new[] { LiveTrigger.GoOn, LiveTrigger.RollOrWait })
        {
            To(LiveState.Wait, trigger, LiveState.Breath, LiveGuards.NotHeld, LiveGuards.SameTempo);
            To(LiveState.Wait, trigger, LiveState.Cue, LiveGuards.NotHeld, LiveGuards.NewTempo);
        }

        Stay(LiveState.Wait, LiveTrigger.RollOrWait, LiveGuards.Held, RollOrWait);
        machine.Configure(LiveState.Wait).Ignore(LiveTrigger.TimeElapsed);
    }

    private void ConfigureFollow()
    {
        const LiveState state = LiveState.Follow;
        ConfigureStepChanges(state);
        ConfigureByHand(state);
        Stay(state, LiveTrigger.GoOn, LiveGuards.Held, holds.Release);
        To(state, LiveTrigger.GoOn, LiveState.Follow, LiveGuards.NotHeld, LiveGuards.NextKey);
        To(state, LiveTrigger.GoOn, LiveState.Introduce, LiveGuards.NotHeld, LiveGuards.LastKey, LiveGuards.NextStep);
        To(state, LiveTrigger.GoOn, LiveState.Finished, LiveGuards.NotHeld, LiveGuards.LastKey, LiveGuards.LastStep);
        Stay(state, LiveTrigger.Pause, LiveGuards.Held, holds.Release);
        Stay(state, LiveTrigger.Pause, LiveGuards.NotHeld, holds.Pause);
        To(state, LiveTrigger.KeyHeard, LiveState.Follow);
        To(state, LiveTrigger.Repeat, LiveState.Follow);
        To(state, LiveTrigger.JumpToKey, LiveState.Follow);
        To(state, LiveTrigger.Follow, LiveState.Cue);
        Stay(state, LiveTrigger.TurnRound, LiveGuards.CanTurn, ladder.TurnRound);
        Stay(state, LiveTrigger.OneMoreKey, LiveGuards.Always, ladder.OneMoreKey);
        Stay(state, LiveTrigger.CueAgain, LiveGuards.Always, chords.GiveCue);
        Stay(state, LiveTrigger.ProofNote, LiveGuards.Always, chords.Prove);
        machine.Configure(state).OnEntry(follow.Enter).OnExit(follow.Leave).Ignore(LiveTrigger.TimeElapsed).Ignore(LiveTrigger.CueDue);
    }

    private void ConfigurePhase()
    {
        const LiveState state = LiveState.Phase;
        Stay(state, LiveTrigger.Follow, LiveGuards.Always, follow.Toggle);
        ConfigureStepChanges(state);
        foreach (LiveTrigger trigger in new[] { LiveTrigger.GoOn, LiveTrigger.TimeElapsed })
        {
            To(state, trigger, LiveState.Phase, LiveGuards.NotHeld, LiveGuards.NextPhase);
            To(state, trigger, LiveState.Introduce, LiveGuards.NotHeld, LiveGuards.LastPhase, LiveGuards.NextStep);
            To(state, trigger, LiveState.Finished, LiveGuards.NotHeld, LiveGuards.LastPhase, LiveGuards.LastStep);
        }

        To(state, LiveTrigger.GoOn, LiveState.Phase, LiveGuards.Held);
        IgnoreIfHeld(state, LiveTrigger.TimeElapsed);
        To(state, LiveTrigger.Pause, LiveState.Phase, LiveGuards.Paused);
        Stay(state, LiveTrigger.Pause, LiveGuards.NotPaused, holds.Pause);
        To(state, LiveTrigger.Repeat, LiveState.Phase);
        Stay(state, LiveTrigger.RollOrWait, LiveGuards.Always, RollOrWait);
        machine.Configure(state)
            .OnEntry(steps.Phase)
            .Ignore(LiveTrigger.CueDue);
    }

    private void ConfigureFinished()
    {
        Stay(LiveState.Finished, LiveTrigger.Silence, LiveGuards.Always, holds.Silence);
        machine.Configure(LiveState.Finished)
            .OnEntry(steps.Finish)
            .Ignore(LiveTrigger.TimeElapsed)
            .Ignore(LiveTrigger.CueDue);
    }

    /// <summary>What is the same in every state in which a step is introduced or led.</summary>
    private void ConfigureStepChanges(LiveState state)
    {
        To(state, LiveTrigger.StepBack, LiveState.Introduce, LiveGuards.PreviousStep);
        To(state, LiveTrigger.StepOn, LiveState.Introduce, LiveGuards.NextStep);
        To(state, LiveTrigger.End, LiveState.Finished);
        Stay(state, LiveTrigger.Faster, LiveGuards.CanGoFaster, tempo.Faster);
        Stay(state, LiveTrigger.Slower, LiveGuards.CanGoSlower, tempo.Slower);
        Stay(state, LiveTrigger.TapTempo, LiveGuards.HasTempo, tempo.Tap);
        Stay(state, LiveTrigger.Silence, LiveGuards.Always, holds.Silence);
        Stay(state, LiveTrigger.TakeCut, LiveGuards.HasCut, cuts.Take);
        ConfigureInsert(state);
    }

    private void ConfigureInsert(LiveState state)
    {
        Stay(state, LiveTrigger.InsertNext, LiveGuards.Always, steps.InsertNext);
        To(state, LiveTrigger.InsertNow, LiveState.Introduce);
    }

    private void To(LiveState from, LiveTrigger trigger, LiveState to, params LiveGuard[] guards)
    {
        Tuple<Func<bool>, string>[] conditions = [.. guards.Select(Condition)];
        _ = from == to
            ? machine.Configure(from).PermitReentryIf(trigger, conditions)
            : machine.Configure(from).PermitIf(trigger, to, conditions);
    }

    private void Stay(LiveState state, LiveTrigger trigger, LiveGuard guard, Action action) =>
        machine.Configure(state).InternalTransitionIf(trigger, _ => guard.HoldsAt(turn.Session, turn.Now), action, guard.Words);

    private void IgnoreIfHeld(LiveState state, LiveTrigger trigger) =>
        machine.Configure(state).IgnoreIf(trigger, Condition(LiveGuards.Held));

    private Tuple<Func<bool>, string> Condition(LiveGuard guard) => new(() => guard.HoldsAt(turn.Session, turn.Now), guard.Words);

    private static bool Stays(string line) => line.Trim().Split(' ') is [var from, "-->", var to, ":", _, .. var rest] && from == to && !rest.Contains("/");

    private void Cue(StateMachine<LiveState, LiveTrigger>.Transition transition)
    {
        follow.Switch(transition, follows: false);
        rungs.Cue(transition);
    }

    private void RollOrWait() => turn.Session = turn.Session with { Rolling = !turn.Session.Rolling };
}
