using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Tests.Sessions.Live;

namespace WarmupConsole.Tests.Sessions.Review;

public class RehearsalAheadTests
{
    private static readonly Warmup Warmup = LiveFixtures.Of(LiveFixtures.Step(LiveFixtures.Scale), LiveFixtures.Step(LiveFixtures.Scale));

    [Fact]
    public void Without_marks_it_says_how_far_each_part_sang_and_that_nothing_was_marked() => Assert.Equal(
        [
            "Warmed up without a mark of strain: sopranos up to A4, altos up to A4, tenors up to A3, basses up to A3.",
            "To spare: nobody was marked tired or strained.",
            "To listen for: nothing was marked.",
        ],
        Of(Sung()));

    [Fact]
    public void Strain_is_spared_pitch_is_listened_for_and_praise_is_what_went_well()
    {
        SampleLog log = Sung()
            .Mark(new(1, 0, 1, "s strained", ["soprano"], "strained", "D4"))
            .Mark(new(2, 0, 1, "a f", ["alto"], "flat", "D4"))
            .Mark(new(3, 0, 0, "a f", ["alto"], "flat", "C4"));
        Assert.Equal(
            [
                "Warmed up without a mark of strain: sopranos up to G4, altos up to A4, tenors up to A3, basses up to A3.",
                "To spare: sopranos strained (once, in D).",
                "To listen for: altos flat (2 times, in D and C).",
            ],
            Of(log));
        Assert.Equal("Warmed up well: basses good (once, in C).", Of(log.Mark(new(4, 0, 0, "b g", ["bass"], "good", "C4")))[0]);
    }

    [Fact]
    public void Who_is_few_or_has_a_cold_is_spared() =>
        Assert.Equal("To spare: tenors and basses (few, tired or with colds tonight).", RehearsalAhead.Of(Review(Sung()), WarmupBuilder.For(TonightText.Read("t 2, b colds", LiveFixtures.Choir)!, Warmup))[1]);

    [Fact]
    public void The_step_that_took_the_longest_beyond_its_plan_is_named()
    {
        SampleLog log = Sung().After(600, new StepStarted(1, "five-note-scale", [60])).After(5, new RunEnded("ended"));
        Assert.StartsWith("Longest beyond its plan: Five-note scale, 10:", Of(log)[^1], StringComparison.Ordinal);
        Assert.Equal([Warmup.Steps[0].Planned, Warmup.Steps[1].Planned], RehearsalAhead.Times(Review(log), Warmup).Select(time => time.Planned));
        Assert.True(RehearsalAhead.Times(Review(log), Warmup)[0].Spent > TimeSpan.FromMinutes(10));
    }

    [Fact]
    public void Nothing_sung_is_said_so() => Assert.Equal(
        "Warmed up: no part sang a key without a mark of strain.",
        Of(new SampleLog().Started().After(1, new RunEnded("ended")))[0]);

    private static SampleLog Sung() => new SampleLog().Started().After(1, new StepStarted(0, "five-note-scale", [60, 62])).Rung(0, 0, "C4", 7).Rung(0, 1, "D4", 7);

    private static IReadOnlyList<string> Of(SampleLog log) => RehearsalAhead.Of(Review(log), Warmup);

    private static SessionReview Review(SampleLog log) =>
        SessionReview.From(log.Records, LiveFixtures.Choir, new[] { LiveFixtures.Scale }.ToDictionary(exercise => exercise.Id));
}
