using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Tests.Sessions.Live;

namespace WarmupConsole.Tests.Sessions.Planning;

/// <summary>What goes first when it is late, and what never goes.</summary>
public sealed class CutOrderTests
{
    private static readonly Exercise Hum = Sung("hum", Stage.Humming, Purpose.ScaleMotion);
    private static readonly Exercise Scale = Sung("scale", Stage.Sung, Purpose.ScaleMotion);
    private static readonly Exercise Other = Sung("other", Stage.Sung, Purpose.ScaleMotion, Purpose.Legato);
    private static readonly Exercise Settle = Sung("settle", Stage.Settling, Purpose.ScaleMotion);

    [Fact]
    public void The_way_back_of_long_ladders_goes_first_the_longest_before_the_others() =>
        Assert.Equal([(2, 6, true), (1, 4, true), (1, 0, false)], Cuts(Ahead(1, Scale, 4), Ahead(2, Other, 6), Ahead(3, Scale, 2)).Take(3).Select(cut => (cut.Step, cut.Keys, !cut.IsWhole)));

    [Fact]
    public void A_way_back_wins_its_keys_and_their_breaths() =>
        Assert.Equal(TimeSpan.FromSeconds(4 * 11), Cuts(Ahead(1, Scale, 5)).First().Saves);

    [Fact]
    public void Keys_that_stand_are_kept_and_a_short_rest_is_no_cut()
    {
        StepAhead step = Ahead(1, Scale, 5);
        Assert.Equal(6, Cuts(step with { Standing = 6, HasBegun = true }).Single().Keys);
        Assert.Empty(Cuts(step with { Standing = 7, HasBegun = true }));
    }

    [Fact]
    public void Only_what_another_step_serves_as_well_is_left_out_the_most_repeated_first()
    {
        Exercise alone = Sung("alone", Stage.Sung, Purpose.LeapOctave);
        StepCut[] cuts = [.. Cuts([Hum, Hum], Ahead(1, alone, 1), Ahead(2, Other, 1), Ahead(3, Scale, 1), Ahead(4, Other, 1))];
        Assert.Equal([3, 2, 4], cuts.Select(cut => cut.Step));
        Assert.All(cuts, cut => Assert.True(cut.IsWhole && cut.Saves > TimeSpan.Zero));
    }

    [Fact]
    public void The_present_step_is_never_left_out() => Assert.Empty(Cuts([Scale, Scale], Ahead(1, Scale, 2) with { HasBegun = true }));

    [Fact]
    public void Body_breathing_the_first_half_closed_step_and_settling_stay() =>
        Assert.Empty(Cuts([Scale, LiveFixtures.Breath], Ahead(1, LiveFixtures.Breath, 0), Ahead(2, Hum, 6), Ahead(3, Settle, 6)));

    [Theory]
    [InlineData("heard on 16 February 2027, reached here from below and from above: altos flat in E (2 keys)")]
    [InlineData("asked for, reached here from below and from above: basses on low F")]
    public void What_answers_a_finding_or_a_need_stays(string because)
    {
        StepAhead step = Ahead(1, Scale, 6);
        Assert.NotEmpty(Cuts(step));
        Assert.Empty(Cuts(step with { Step = step.Step with { Plan = step.Step.Plan with { Because = ["a word first", because] } } }));
    }

    private static IEnumerable<StepCut> Cuts(params StepAhead[] ahead) => Cuts([], ahead);

    private static IReadOnlyList<StepCut> Cuts(Exercise[] led, params StepAhead[] ahead) => CutOrder.Of(ahead, led);

    /// <summary>Up through so many keys and back.</summary>
    private static StepAhead Ahead(int number, Exercise exercise, int upwards)
    {
        PlanStep plan = new() { ExerciseId = exercise.Id, Keys = new() { MostKeys = upwards, Shape = LadderShape.UpAndBack, ReachPercent = 100 } };
        WarmupStep step = WarmupBuilder.Build(LiveFixtures.Choir, new() { Steps = [plan] }, new Dictionary<string, Exercise> { [exercise.Id] = exercise }).Steps[0];
        return new(number, step, step.Ladder.Rungs, 1, HasBegun: false);
    }

    private static Exercise Sung(string id, Stage stage, params Purpose[] purposes) => LiveFixtures.Scale with { Id = id, Stage = stage, Purposes = purposes };
}
