using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Findings.Exposure;
using WarmupConsole.Sessions.Findings.Practice;
using WarmupConsole.Tests.Sessions.Findings.Seasons;
using WarmupConsole.Tests.Sessions.Review;

namespace WarmupConsole.Tests.Sessions.Findings;

public class PractisedTests
{
    [Fact]
    public void Talk_ends_with_the_first_chord_and_pauses_are_left_out()
    {
        SungSession session = Fold(log => log.After(20, new StepStarted(0, "triad", [])).After(7, new HoldChanged("paused")).After(60, new HoldChanged("none"))
            .After(3, new LeadInStarted(0, 0)).After(30, new StepStarted(1, "one-note", [])).After(5, new RunEnded("ended")).After(100, new HoldChanged("none")));
        Assert.Equal([("triad", 10.0, 40.0, true), ("one-note", 5.0, 5.0, false)], session.Led.Select(step => (step.Exercise, step.Talk.TotalSeconds, step.Spent.TotalSeconds, step.HasBegun)));
    }

    [Fact]
    public void Purposes_are_counted_by_step_and_session_and_the_longest_not_covered_comes_first()
    {
        Exercise triad = SeasonPatterns.Exercises["triad"] with { Purposes = [Purpose.LeapThird] };
        Exercise note = SeasonPatterns.Exercises["one-note"] with { Purposes = [Purpose.Sustained] };
        Practised practised = Practised.In([Evening("triad", "triad", "one-note"), Evening("one-note"), Evening("one-note", "lost")], [triad, note]);
        Assert.Equal((2, 1, 2), Counts(practised, Purpose.LeapThird));
        Assert.Equal((3, 3, 0), Counts(practised, Purpose.Sustained));
        Assert.Equal((0, 0, 3), Counts(practised, Purpose.Canon));
        Assert.Null(practised.Purposes[0].Last);
        Assert.Equal(Purpose.Sustained, practised.Purposes[^1].Purpose);
        Assert.Equal(["lost"], practised.Gone);
        Assert.Equal([("one-note", 3), ("triad", 2), ("lost", 1)], practised.Exercises.Select(exercise => (exercise.Id, exercise.Times)));
    }

    private static (int, int, int) Counts(Practised practised, Purpose purpose) =>
        practised.Purposes.Single(one => one.Purpose == purpose) is var found ? (found.Steps, found.Sessions, found.Since) : default;

    private static SungSession Evening(params string[] exercises) => Fold(log => exercises.Index().Aggregate(
        log, (so, exercise) => so.After(10, new StepStarted(exercise.Index, exercise.Item, [])).After(15, new LeadInStarted(exercise.Index, 0))));

    private static SungSession Fold(Func<SampleLog, SampleLog> events) =>
        SungSession.From("evening", events(new SampleLog().Started()).Records, SeasonChoir.Choir, SeasonPatterns.Exercises, new LineBook());
}
