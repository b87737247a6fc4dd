using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Tests.Sessions.Live;

namespace WarmupConsole.Tests.Sessions.Planning;

public class WarmupBuilderTests
{
    [Fact]
    public void What_the_plan_leaves_open_is_taken_from_the_exercise()
    {
        WarmupStep step = Build(new() { ExerciseId = "counted-breath" });

        Assert.Equal((Tempo.FromBeatsPerMinute(60), 20, 2), (step.Tempo, step.TalkSeconds, step.Rounds));
        Assert.Empty(step.Ladder.Rungs);
        Assert.Equal(TimeSpan.FromSeconds(20 + 24), step.Planned);
    }

    [Fact]
    public void What_the_plan_says_wins()
    {
        WarmupStep step = Build(new() { ExerciseId = "counted-breath", Tempo = Tempo.FromBeatsPerMinute(48), TalkSeconds = 0, Rounds = 3 });

        Assert.Equal(TimeSpan.FromSeconds(36 * 60 / 48.0), step.Planned);
    }

    [Fact]
    public void A_sung_step_gets_its_ladder_and_lasts_lead_in_and_rungs_with_their_breath()
    {
        WarmupStep step = Build(new() { ExerciseId = "five-note-scale", BreathBeats = 3, Keys = new() { MostKeys = 2 }, Rounds = 7 });

        Assert.Equal([60, 61, 60], step.Ladder.Rungs.Select(rung => rung.Tonic.Midi));
        Assert.Equal(0, step.Rounds);
        Assert.Equal(TimeSpan.FromSeconds(10 + 4 + (3 * 12)), step.Planned);
    }

    [Fact]
    public void A_step_in_which_no_key_fits_takes_no_time_and_says_why()
    {
        WarmupStep step = Build(new() { ExerciseId = "too-wide" });

        Assert.Empty(step.Ladder.Rungs);
        Assert.NotEmpty(step.Ladder.Reasons);
        Assert.Equal(TimeSpan.Zero, step.Planned);
    }

    [Fact]
    public void The_whole_is_the_sum_of_its_steps() =>
        Assert.Equal(LiveFixtures.Whole.Steps.Sum(step => step.Planned.TotalSeconds), LiveFixtures.Whole.Planned.TotalSeconds, 6);

    [Fact]
    public void An_exercise_that_is_not_there_is_a_programming_error() =>
        Assert.Throws<KeyNotFoundException>(() => WarmupBuilder.Build(
            LiveFixtures.Choir,
            new() { Steps = [new() { ExerciseId = "nowhere" }] },
            new Dictionary<string, Exercise>()));

    private static WarmupStep Build(PlanStep step) => LiveFixtures.Of(step).Steps.Single();
}
