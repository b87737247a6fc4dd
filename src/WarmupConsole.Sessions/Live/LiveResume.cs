using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Sessions.Live;

/// <summary>Rebuilds a session from the facts of its log.</summary>
internal static class LiveResume
{
    public static void Into(LiveTurn turn, SessionFacts facts)
    {
        turn.Session = turn.Session with { ChangedOrder = facts.Order, Shortened = facts.Shortened, Follows = facts.Follows };
        if (facts.HasBegun && facts.StepIndex < turn.Session.Warmup.Steps.Count)
        {
            turn.Session = AtFacts(turn.Session, facts);
        }

        turn.Session = WithMarks(turn.Session, facts) with { State = facts.HasEnded ? LiveState.Finished : turn.Session.State };
        turn.Record(new RunResumed(turn.Session.StepIndex, turn.Session.RungIndex));
        if (facts is { HasBegun: true, MilliBpm: 0 })
        {
            turn.RecordTimeline(new(turn.Session.Tempo, Beats.Zero, turn.Now));
        }

        if (turn.Session.Hold != Hold.None)
        {
            turn.Record(new HoldChanged(HoldText.Write(turn.Session.Hold)));
        }
    }

    private static LiveSession AtFacts(LiveSession session, SessionFacts facts)
    {
        LiveSession at = StepLeading.AtStep(session, facts.StepIndex);
        Rung[] rungs = [.. LadderKeys.Rungs(at.Step!, session.Warmup.Choir.Parts, facts.Keys).Select(facts.Voicing.Of)];
        int rung = facts.Progress == RungProgress.Over ? facts.RungIndex + 1 : facts.RungIndex;
        bool inKeys = facts.Progress != RungProgress.NotBegun && rungs.Length > 0 && !facts.HasEnded;
        return at with
        {
            HasBegun = true,
            State = !inKeys ? LiveState.Introduce : facts.Follows ? LiveState.Follow : LiveState.Cue,
            Hold = inKeys ? Hold.Paused : Hold.None,
            Rungs = rungs,
            RungIndex = Math.Clamp(rung, 0, Math.Max(0, rungs.Length - 1)),
            Tempo = facts.MilliBpm == 0 ? at.Tempo : Tempo.Clamp(facts.MilliBpm),
            TempoKey = facts.TempoKey,
            Voicing = facts.Voicing,
            BreathBeats = facts.BreathBeats == 0 ? null : facts.BreathBeats,
            Style = facts.Style,
            Clocks = session.Clocks with { IsRunning = !facts.HasEnded && !inKeys },
        };
    }

    private static LiveSession WithMarks(LiveSession session, SessionFacts facts) => session with
    {
        Marks = [.. facts.Marks.Select((mark, at) => Mark(session, mark, facts.Marks.Take(at).Count(earlier => (earlier.Raw, earlier.Nanoseconds) == (mark.Raw, mark.Nanoseconds))))],
        NextMarkId = facts.NextMarkId,
    };

    /// <summary>What a mark says follows from its line, and from its place among the marks of that line.</summary>
    private static LiveMark Mark(LiveSession session, MarkFact fact, int place)
    {
        IReadOnlyList<MarkContent> contents = MarkGrammar.Parse(fact.Raw, session.Warmup.Choir);
        MarkContent content = contents[Math.Min(place, contents.Count - 1)];
        MarkAnchor anchor = LiveMarks.AnchorAt(session, new(fact.Step, fact.Rung, null, new(fact.Nanoseconds)));
        return new(fact.Id, content, anchor, MarkWords.Echo(content, anchor, session.Warmup.Choir), IsFlushed: true);
    }
}
