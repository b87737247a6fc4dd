using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Sessions.Live;

/// <summary>Rebuilds a session from the facts of its log.</summary>
internal static class LiveResume
{
    public static void Into(LiveTurn turn, SessionFacts facts)
    {
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
        List<Rung> rungs = Rebuilt(at.Step!, facts.Keys, session.Warmup.Choir.Parts);
        int rung = facts.Progress == RungProgress.Over ? facts.RungIndex + 1 : facts.RungIndex;
        bool inKeys = facts.Progress != RungProgress.NotBegun && rungs.Count > 0 && !facts.HasEnded;
        return at with
        {
            HasBegun = true,
            State = inKeys ? LiveState.Cue : LiveState.Introduce,
            Hold = inKeys ? Hold.Paused : Hold.None,
            Rungs = rungs,
            RungIndex = Math.Clamp(rung, 0, Math.Max(0, rungs.Count - 1)),
            Tempo = facts.MilliBpm == 0 ? at.Tempo : Tempo.Clamp(facts.MilliBpm),
            TempoKey = facts.TempoKey,
            Clocks = session.Clocks with { IsRunning = !facts.HasEnded && !inKeys },
        };
    }

    private static LiveSession WithMarks(LiveSession session, SessionFacts facts) => session with
    {
        Marks = [.. facts.Marks.GroupBy(mark => (mark.Raw, mark.Nanoseconds)).SelectMany(line => Marks(session, [.. line]))],
        NextMarkId = facts.NextMarkId,
    };

    /// <summary>The marks of one typed line, in the order in which the grammar finds them.</summary>
    private static IEnumerable<LiveMark> Marks(LiveSession session, MarkFact[] line)
    {
        IReadOnlyList<MarkContent> contents = MarkGrammar.Parse(line[0].Raw, session.Warmup.Choir);
        return line.Select((fact, index) => Mark(session, fact, contents[Math.Min(index, contents.Count - 1)]));
    }

    private static LiveMark Mark(LiveSession session, MarkFact fact, MarkContent content)
    {
        MarkAnchor anchor = LiveMarks.AnchorAt(session, new(fact.Step, fact.Rung, null, new(fact.Nanoseconds)));
        return new(fact.Id, content, anchor, MarkWords.Echo(content, anchor, session.Warmup.Choir), IsFlushed: true);
    }

    /// <summary>The ladder in the logged keys: planned rungs where the plan has them, and rungs beyond it as "one more key" makes them.</summary>
    private static List<Rung> Rebuilt(WarmupStep step, IReadOnlyList<int> keys, IReadOnlyList<Part> parts)
    {
        Dictionary<int, Rung> known = [];
        foreach (Rung rung in step.Ladder.Rungs)
        {
            known[rung.Tonic.Midi] = rung;
        }

        return known.Count == 0 ? [] : [.. keys.Select(key => Known(known, key, step, parts))];
    }

    private static Rung Known(Dictionary<int, Rung> known, int key, WarmupStep step, IReadOnlyList<Part> parts)
    {
        while (!known.ContainsKey(key))
        {
            int nearest = known.Keys.MinBy(other => Math.Abs(other - key));
            LadderSpec towards = step.Plan.Keys with { Shape = key > nearest ? LadderShape.Up : LadderShape.Down, StepSemitones = 1 };
            Rung added = LadderEdit.OneMoreKey(step.Exercise, parts, towards, [known[nearest]], 0).Added;
            known[added.Tonic.Midi] = added;
        }

        return known[key];
    }
}
