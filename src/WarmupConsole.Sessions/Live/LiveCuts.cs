using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Sessions.Live;

/// <summary>The cut that is offered when a warm-up runs late, and taking it.</summary>
public sealed class LiveCuts
{
    /// <summary>Less than this is neither late nor early.</summary>
    public static readonly TimeSpan Noticeable = TimeSpan.FromSeconds(20);

    /// <summary>What wins more than twice the delay is too much for it.</summary>
    private const int TooMuch = 2;

    private readonly LiveTurn turn;

    internal LiveCuts(LiveTurn turn) => this.turn = turn;

    private LiveSession Session => turn.Session;

    /// <summary>By how much the warm-up will pass its plan as things are.</summary>
    public static TimeSpan Delay(LiveSession session, Moment now)
    {
        LiveTimers timers = LiveTimers.At(session, now);
        return timers.WholeProjected - timers.WholePlanned;
    }

    /// <summary>The least harmful cut when it runs late; null when it does not, or when nothing should be cut.</summary>
    public static StepCut? Offer(LiveSession session, Moment now)
    {
        ArgumentNullException.ThrowIfNull(session);
        return WhyNone(session, now) is null ? Fitting(session, Delay(session, now)) : null;
    }

    /// <summary>Why no cut is offered, or null.</summary>
    internal static string? WhyNone(LiveSession session, Moment now)
    {
        TimeSpan delay = Delay(session, now);
        return session.Warmup.IsOpen || session.State is LiveState.Ready or LiveState.Finished || delay < Noticeable ? LiveTexts.NotLate
            : Fitting(session, delay) is null ? LiveTexts.NothingToCut
            : null;
    }

    /// <summary>What the offer is, in words.</summary>
    public static string Words(LiveSession session, StepCut cut)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(cut);
        string title = session.Warmup.Steps[cut.Step].Exercise.Title;
        return cut.IsWhole ? LiveTexts.LeaveOut(title, ClockText.Of(cut.Saves)) : LiveTexts.NoWayBack(title, ClockText.Of(cut.Saves));
    }

    internal void Take()
    {
        StepCut cut = Offer(Session, turn.Now)!;
        string words = Words(Session, cut);
        if (cut.IsWhole)
        {
            turn.Session = Session with { ChangedOrder = [.. Session.Order.Where(step => step != cut.Step)] };
            turn.Record(new OrderChanged(Session.Order, LiveTexts.Late));
        }
        else
        {
            Shorten(cut);
        }

        turn.Record(new CutTaken(cut.Step, Session.Warmup.Steps[cut.Step].Exercise.Id, cut.Keys, (int)cut.Saves.TotalSeconds));
        turn.Tell(LiveTexts.Cut(words));
    }

    private void Shorten(StepCut cut)
    {
        turn.Session = Session with { Shortened = Session.Shortened.With(cut.Step, cut.Keys) };
        if (cut.Step == Session.StepIndex)
        {
            turn.Session = Session with { Rungs = [.. Session.Rungs.Take(cut.Keys)], WarnedBeyondExtreme = false };
            turn.Record(new LadderChanged(cut.Step, Session.RungIndex, SessionKeys.Of(Session.Rungs), LiveTexts.Late));
        }
    }

    private static StepCut? Fitting(LiveSession session, TimeSpan delay) =>
        CutOrder.Of(Ahead(session), [.. session.Order.Take(Math.Max(0, session.Place)).Select(step => session.Warmup.Steps[step].Exercise)])
            .FirstOrDefault(cut => cut.Saves > TimeSpan.Zero && cut.Saves <= delay * TooMuch);

    /// <summary>Without what was put in live.</summary>
    private static StepAhead[] Ahead(LiveSession session) =>
    [
        .. session.Order.Skip(Math.Max(0, session.Place)).Where(step => step < session.Warmup.Plan.Steps.Count).Select(step => step == session.StepIndex
            ? new StepAhead(step, session.Warmup.Steps[step], session.Rungs, Standing(session), HasBegun: true)
            : new StepAhead(step, session.Warmup.Steps[step], session.LadderOf(step), 1, HasBegun: false)),
    ];

    /// <summary>Between two keys the next one stands: the choir waits for it.</summary>
    private static int Standing(LiveSession session) =>
        session.RungIndex + (session.NextKeyCued || session.State is LiveState.Breath or LiveState.Wait ? 2 : 1);
}
