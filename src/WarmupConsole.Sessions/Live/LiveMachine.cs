using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Sessions.Live;

/// <summary>
/// Leads a warm-up. Pure: a session, an input and a moment give the next session and what the host must do. Nothing that
/// matters is kept between calls, so any thread may call; who owns the session is the host's business.
/// </summary>
public static class LiveMachine
{
    /// <summary>A session that waits for the first "go on". The host logs what is run.</summary>
    public static LiveOutcome Start(Warmup warmup, Moment now)
    {
        ArgumentNullException.ThrowIfNull(warmup);
        return new(New(warmup, now), []);
    }

    /// <summary>
    /// A run that was cut off: paused before the rung that it had come to, in the ladder as it was; or at the introduction of a
    /// step that had not begun. Going on leads in.
    /// </summary>
    /// <param name="warmup">Made from the plan, choir and exercises that the log keeps.</param>
    /// <param name="facts">Folded from the log.</param>
    /// <param name="now">The moment of resumption.</param>
    /// <param name="spent">Time spent before it was cut off: in the warm-up, and in the step it had come to.</param>
    public static LiveOutcome Resume(Warmup warmup, SessionFacts facts, Moment now, (TimeSpan Whole, TimeSpan Step) spent = default)
    {
        ArgumentNullException.ThrowIfNull(warmup);
        ArgumentNullException.ThrowIfNull(facts);
        LiveSession anew = New(warmup, now);
        LiveTurn turn = new();
        turn.Begin(anew with { Clocks = anew.Clocks with { WholeSpent = spent.Whole, StepSpent = spent.Step } }, now);
        LiveResume.Into(turn, facts);
        return turn.Outcome;
    }

    /// <summary>
    /// What an input leads to. Whatever was due before it happens first, at the beats where it was due: late calls lose no beat and
    /// states never drift.
    /// </summary>
    public static LiveOutcome Handle(LiveSession session, LiveInput input, Moment now)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(input);
        Moment present = now < session.Clocks.Since ? session.Clocks.Since : now;
        LiveStates states = LiveStates.At(session, present);
        states.Advance(present);
        Take(input, states.Turn, states);
        return states.Turn.Outcome;
    }

    /// <summary>Why an action would do nothing at a moment, in words; null when it would act.</summary>
    public static string? WhyNot(LiveSession session, LiveAction action, Moment now)
    {
        ArgumentNullException.ThrowIfNull(session);
        return LiveStates.At(session, now).WhyNot(action);
    }

    /// <summary>The states and transitions as a Mermaid diagram, for docs/session-states.md.</summary>
    public static string Graph()
    {
        Warmup empty = new(new() { Name = "", Parts = [] }, new() { Steps = [] }, []);
        return LiveStates.At(new() { Warmup = empty }, default).Graph();
    }

    private static LiveSession New(Warmup warmup, Moment now) => StepLeading.AtStep(
        new()
        {
            Warmup = warmup,
            Rolling = warmup.Plan.Rolling,
            Clocks = new(TimeSpan.Zero, TimeSpan.Zero, now, IsRunning: false),
        },
        0);

    private static void Take(LiveInput input, LiveTurn turn, LiveStates states)
    {
        switch (input)
        {
            case LiveInput.Act act:
                Act(act.Action, null, states);
                break;
            case LiveInput.JumpTo jump:
                Jump(jump, states);
                break;
            case LiveInput.Insert insert:
                Act(insert.Now || IsAtNothing(turn.Session) ? LiveAction.InsertNow : LiveAction.InsertNext, input, states);
                break;
            case LiveInput.Sing:
                Act(LiveAction.ChooseParts, input, states);
                break;
            case LiveInput.SwapOctave:
                Act(LiveAction.SwapOctave, input, states);
                break;
            case LiveInput.Accompany:
                Act(LiveAction.Accompany, input, states);
                break;
            case LiveInput.Trouble or LiveInput.News or LiveInput.Warning:
                Hear(input, states);
                break;
            case LiveInput.NoteHeard note:
                states.Hear(note.Midi);
                break;
            default:
                TakeMark(input, turn);
                break;
        }
    }

    private static void Hear(LiveInput outside, LiveStates states)
    {
        switch (outside)
        {
            case LiveInput.Trouble trouble:
                states.Fire(LiveAction.Silence);
                states.Turn.Tell(trouble.Sentence, trouble: true);
                break;
            case LiveInput.News news:
                states.Turn.Tell(news.Sentence);
                break;
            case LiveInput.Warning warning:
                states.Turn.Tell(warning.Sentence, trouble: true);
                break;
        }
    }

    private static void TakeMark(LiveInput input, LiveTurn turn)
    {
        LiveMarks marks = new(turn);
        switch (input)
        {
            case LiveInput.MarkKept kept:
                marks.Keep(kept);
                break;
            case LiveInput.PinMoment:
                marks.Pin();
                break;
            case LiveInput.UndoMark:
                marks.Undo();
                break;
            case LiveInput.MoveMarkBack:
                marks.MoveBack();
                break;
            case LiveInput.TellTonight told:
                new LiveEvening(turn).Tell(told);
                break;
            case LiveInput.RehearsalKept rehearsed:
                new LiveEvening(turn).Keep(rehearsed);
                break;
            case LiveInput.MarksFlushed flushed:
                marks.Flushed(flushed.Facts);
                break;
        }
    }

    /// <summary>Without a plan nothing is present that another step could come behind.</summary>
    private static bool IsAtNothing(LiveSession session) => session is { State: LiveState.Introduce, Step: null };

    private static void Jump(LiveInput.JumpTo jump, LiveStates states)
    {
        if (new LiveVoices(states.Turn).WhyNotJump(jump.Tonic) is { } reason)
        {
            states.Turn.Tell(reason);
        }
        else
        {
            Act(LiveAction.JumpToKey, jump, states);
        }
    }

    private static void Act(LiveAction action, LiveInput? asked, LiveStates states)
    {
        LiveTurn turn = states.Turn;
        bool asksMore = action is LiveAction.JumpToKey or LiveAction.ChooseParts or LiveAction.SwapOctave or LiveAction.Accompany or LiveAction.InsertNext or LiveAction.InsertNow;
        if ((states.WhyNot(action) ?? (asksMore && asked is null ? LiveTexts.SayWhich : null)) is { } reason)
        {
            turn.Tell(reason);
            return;
        }

        turn.Asked = asked;
        turn.Session = turn.Session with { Notice = null };
        states.Fire(action);
    }
}
