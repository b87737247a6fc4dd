using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Tests.Simulation;

/// <summary>What holds after every event of one run, whatever happened.</summary>
internal sealed class Invariants(SimulatedPiano piano, ScoreModel score)
{
    /// <summary>As many presses stand for a key or for parts that the director named: any key may follow.</summary>
    internal const int AnyKey = 1000;

    private LiveSession? _before;
    private LiveTimers? _timersBefore;

    /// <summary>Another run goes on in a new process: its clocks and generations begin anew.</summary>
    internal void Restarted() => (_before, _timersBefore) = (null, null);

    /// <summary>After a turn of the session's thread.</summary>
    /// <param name="session">As it is now.</param>
    /// <param name="now">The present.</param>
    /// <param name="insisted">How often one more key was asked for since the turn before.</param>
    internal void AfterHost(LiveSession session, Moment now, int insisted)
    {
        Law.Holds(session.NextWake is not { } wake || wake > now, "What was due was not done", session.State);
        Law.Holds(session.Generation >= (_before?.Generation ?? 0), "The generation fell", session.Generation);
        Law.Holds(session.Hold == Hold.None || session.NextWake is null, "Something is due in a hold", session.State);
        if (session.State == LiveState.Rung && session.Hold == Hold.None && score.IsDeaf == false)
        {
            score.EndsBy(session.StateEnd!.Value);
        }

        if (!ReferenceEquals(session.Rungs, _before?.Rungs))
        {
            CheckLadder(session, insisted);
        }

        _before = session;
    }

    /// <summary>After any turn in which the player was up to date.</summary>
    internal void InQuiet(LiveSession session)
    {
        bool isQuiet = session.Hold != Hold.None || session.State is LiveState.Ready or LiveState.Introduce or LiveState.Wait or LiveState.Phase or LiveState.Finished;
        if (isQuiet && !score.IsDeaf && session.Sounded is { } sounded)
        {
            Law.Holds(piano.Sounding.All(sounded.Notes.Contains), "Something sounds beside what was given by hand", piano);
        }
        else if (isQuiet && !score.IsDeaf)
        {
            Law.Holds(piano.Sounding.Count == 0, $"In {session.State}, hold {session.Hold}, it is not silent", piano);
        }
    }

    /// <summary>At any moment.</summary>
    internal void Timers(LiveSession session, Moment now)
    {
        LiveTimers timers = LiveTimers.At(session, now);
        Law.Holds(timers.WholeSpent >= (_timersBefore?.WholeSpent ?? TimeSpan.Zero), "The warm-up's clock ran backwards", timers);
        Law.Holds(timers.StepSpent >= TimeSpan.Zero && timers.StepSpent <= timers.WholeSpent, "The step's clock is wrong", timers);
        Law.Holds(timers.StepProjected >= timers.StepSpent && timers.WholeProjected >= timers.WholeSpent, "It is to be over before now", timers);
        _timersBefore = timers;
    }

    /// <summary>What is left of a log holds all marks that were confirmed, as they were confirmed.</summary>
    internal static void Survived(IEnumerable<LiveMark> confirmed, SessionFacts facts)
    {
        foreach (LiveMark mark in confirmed)
        {
            Law.Holds(
                facts.Marks.Any(fact => (fact.Id, fact.Step, fact.Rung, fact.Raw) == (mark.Id, mark.Anchor.Step, mark.Anchor.Rung, mark.Content.Raw)),
                "A confirmed mark is lost",
                mark.Id);
        }
    }

    /// <summary>It goes on in the same ladder, at the rung that was broken off or the one after a whole one, and its log says so.</summary>
    internal static void GoesOn(SessionFacts facts, LiveOutcome resumed)
    {
        SessionFacts shown = resumed.Session.Facts();
        int last = Math.Max(0, facts.Keys.Count - 1);
        int rung = Math.Min(facts.RungIndex + (facts.Progress == RungProgress.Over ? 1 : 0), last);
        Law.Holds(shown.StepIndex == facts.StepIndex && shown.RungIndex == rung, "It goes on elsewhere", LogMirror.Words(facts));
        Law.Holds(shown.Keys.SequenceEqual(facts.Keys) && shown.Marks.SequenceEqual(facts.Marks), "It goes on with something else", LogMirror.Words(facts));
        SessionFacts logged = resumed.Effects.OfType<LiveEffect.Record>().Aggregate(facts, (before, record) => before.After(record.Event));
        Law.Holds(LogMirror.AreSame(shown, logged), "The log of a run that goes on does not fold to what is shown", LogMirror.Words(logged));
    }

    /// <summary>Nobody sings beyond their extreme range, and every key that is added to the ladder was asked for.</summary>
    private void CheckLadder(LiveSession session, int insisted)
    {
        foreach (RungPart part in session.Rungs.SelectMany(rung => rung.Parts).Where(part => part.Sings))
        {
            Law.Holds(part.Part.Range.Extreme.Contains(part.Span), "A part is asked beyond its extreme range", part);
        }

        if (session.Step is { } step && _before is { } before && insisted < AnyKey)
        {
            CheckKeys(session, step, before, insisted);
        }
    }

    /// <summary>One press for each key beyond the plan, and one more, just before or earlier, where someone cannot follow at all.</summary>
    private static void CheckKeys(LiveSession session, WarmupStep step, LiveSession before, int insisted)
    {
        IEnumerable<Rung> known = before.StepIndex == session.StepIndex ? step.Ladder.Rungs.Concat(before.Rungs) : step.Ladder.Rungs;
        HashSet<int> knownKeys = [.. known.Select(rung => rung.Tonic.Midi)];
        int presses = insisted + (before.WarnedBeyondExtreme ? 1 : 0);
        foreach (Rung added in session.Rungs.Where(rung => knownKeys.Add(rung.Tonic.Midi)))
        {
            presses -= LeavesSomeoneBehind(session.Rungs, added) ? 2 : 1;
            Law.Holds(presses >= 0, "A key was added that nobody asked for", added.Tonic);
        }
    }

    private static bool LeavesSomeoneBehind(IReadOnlyList<Rung> rungs, Rung added)
    {
        int index = Enumerable.Range(0, rungs.Count).First(index => rungs[index].Tonic.Midi == added.Tonic.Midi);
        return rungs[index - 1].Parts.Zip(added.Parts).Any(pair => pair.First.Sings && !pair.Second.Part.Range.Extreme.Contains(pair.Second.Span));
    }
}
