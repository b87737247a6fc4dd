using CsCheck;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
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

    private static readonly Gen<PlanStep> AnyStep =
        from talk in Gen.Int[0, 600]
        from breath in Gen.Int[1, 8]
        from first in Gen.Int[20_000, 300_000]
        from last in Gen.Int[20_000, 300_000]
        from most in Gen.Int[1, 24]
        from shape in Gen.Enum<LadderShape>()
        from apart in Gen.Int[1, 4]
        from limit in Gen.OneOf(LadderSpec.Everyone, LadderSpec.AnyPart)
        select new PlanStep
        {
            ExerciseId = "five-note-scale",
            TalkSeconds = talk,
            BreathBeats = breath,
            Tempo = Tempo.FromMilliBeatsPerMinute(first),
            LastTempo = Tempo.FromMilliBeatsPerMinute(last),
            Keys = new() { MostKeys = most, Shape = shape, StepSemitones = apart, Limit = limit },
        };

    /// <summary>The tick of a TimeSpan is lost at most once a rung.</summary>
    private static readonly TimeSpan TicksOfRungs = TimeSpan.FromMicroseconds(10);

    [Fact]
    public void Ladder_time_is_the_sum_of_its_rungs() => AnyStep.Sample(plan =>
    {
        WarmupStep step = Build(plan with { LastTempo = null });
        TimeSpan rung = step.Tempo.DurationOf(StepTiming.RungBeats(step.Exercise, plan.BreathBeats));
        TimeSpan leadIn = step.Tempo.DurationOf(StepTiming.Cue + StepTiming.CountIn);
        AssertSame(TimeSpan.FromSeconds(step.TalkSeconds) + leadIn + (rung * step.Ladder.Rungs.Count), step.Planned);
    });

    [Fact]
    public void Where_the_tempo_changes_each_rung_is_counted_at_its_own_with_the_breath_before_it() => AnyStep.Sample(plan =>
    {
        WarmupStep step = Build(plan);
        int keys = step.Ladder.Rungs.Count;
        Beats breath = Beats.FromBeats(plan.BreathBeats);
        IEnumerable<TimeSpan> rungs = Enumerable.Range(0, keys).Select(key => step.Tempos.At(key).DurationOf(step.Exercise.Pattern!.Length + (key == 0 ? StepTiming.Cue + StepTiming.CountIn : breath)));
        TimeSpan sum = TimeSpan.FromSeconds(step.TalkSeconds) + rungs.Aggregate(TimeSpan.Zero, (a, b) => a + b) + step.Tempos.At(keys - 1).DurationOf(breath);
        AssertSame(sum, step.Planned);
    });

    private static void AssertSame(TimeSpan sum, TimeSpan planned) => Assert.InRange((planned - sum).Duration(), TimeSpan.Zero, TicksOfRungs);

    private static WarmupStep Build(PlanStep step) => LiveFixtures.Of(step).Steps.Single();
}
