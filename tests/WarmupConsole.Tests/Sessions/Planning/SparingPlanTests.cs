using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Next;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Tests.Sessions.Marks;
using WarmupConsole.Tests.Sessions.Review;

namespace WarmupConsole.Tests.Sessions.Planning;

/// <summary>A voice that had too much to do gets less, not more of the same.</summary>
public sealed class SparingPlanTests
{
    private const int WholeTone = 2;

    /// <summary>A week before the concert, when reach is greatest.</summary>
    private static readonly NextPlanInput Growing = Evenings.Usual with
    {
        Choir = SampleChoir.Four with { Concerts = [new(Evenings.NextWeek.AddDays(11), "Spring concert")] },
        Minutes = 20,
    };

    [Theory]
    [InlineData("strained", "Gb5", 15)]
    [InlineData("strained", "E5", 20)]
    [InlineData("pressed", "E5", 25)]
    [InlineData("tired", "F5", 20)]
    [InlineData("hoarse", "F5", 10)]
    public void Of_a_high_pitch_at_which_a_part_strains_the_whole_plan_stays_a_whole_tone_clear(string kind, string pitch, int minutes)
    {
        NextPlanInput input = Growing with { Minutes = minutes, Findings = [Evenings.Finding("soprano", kind, pitch)] };
        NextPlanResult next = NextPlan.From(input);
        Assert.InRange(Highest(input, next.Plan, "soprano"), 0, Pitch.Parse(pitch).Midi - WholeTone);
        Assert.Empty(next.Unmet);
        Assert.DoesNotContain(PlanCheck.Check(Evenings.Ready(input, next.Plan)), remark => remark.Severity != PlanSeverity.Hint);
    }

    [Fact]
    public void What_answers_it_is_soft_or_half_closed_and_says_so()
    {
        NextPlanResult next = NextPlan.From(Growing with { Findings = [Evenings.Finding("soprano", "strained", "Gb5")] });
        PlanStep[] answers = [.. next.Plan.Steps.Where(step => step.Answers.Contains("soprano-strained-gb5"))];
        Assert.NotEmpty(answers);
        Assert.All(answers, step =>
        {
            Exercise exercise = Growing.Exercises[step.ExerciseId];
            Assert.True(exercise.Stage is Stage.Humming or Stage.LipTrill || exercise.Dynamics.All(word => word is "pp" or "p" or "mp"), exercise.Title);
            Assert.StartsWith("sopranos strained on G♭5, marked in about 8 of 24 keys in 2 sessions (soprano-strained-gb5): kept below", step.Because[0], StringComparison.Ordinal);
        });
        Assert.Contains(answers, step => Growing.Exercises[step.ExerciseId].Stage is Stage.Humming or Stage.LipTrill && step.Because[0].Contains(": kept below, soft, on a ", StringComparison.Ordinal));
        Assert.Equal("20 minutes: sopranos strained on G♭5", next.Plan.Title);
    }

    /// <summary>The way of old for everything else: what is flat is not avoided.</summary>
    [Theory]
    [InlineData("flat")]
    [InlineData("uneven")]
    [InlineData("breathy")]
    public void Other_kinds_at_the_same_pitch_are_still_approached_from_both_sides(string kind)
    {
        NextPlanInput input = Growing with { Findings = [Evenings.Finding("soprano", kind, "E5")] };
        NextPlanResult next = NextPlan.From(input);
        PlanStep answer = next.Plan.Steps.First(step => step.Answers.Contains($"soprano-{kind}-e5"));
        Assert.True(Approaches.Pitch(Evenings.Ready(input, new() { Steps = [answer] }).Steps[0], "soprano", Pitch.Parse("E5").Midi));
        Assert.EndsWith("reached here from below and from above", answer.Because[0], StringComparison.Ordinal);
    }

    /// <summary>The same log with another kind takes the altos beyond what is easy, so it is the kind that holds them back.</summary>
    [Theory]
    [InlineData("tired", false)]
    [InlineData("hoarse", false)]
    [InlineData("late", true)]
    public void A_tired_or_hoarse_part_gets_no_summit(string kind, bool isSummit)
    {
        NextPlanInput input = Growing with { Review = Heard(new SampleMark(1, 4, 0, "a " + kind, ["alto"], kind, "D4")) };
        NextPlanResult next = NextPlan.From(input);
        Assert.Equal(isSummit, Highest(input, next.Plan, "alto") > input.Choir.Parts[1].Range.Comfortable.High.Midi);
        Assert.Equal(!isSummit, next.Plan.Steps.SelectMany(step => step.Because).Any(reason =>
            reason.StartsWith($"heard on 16 February 2027: altos {kind} in D (1 key): within what is easy, ", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_low_pitch_is_spared_from_above()
    {
        NextPlanInput input = Growing with { Findings = [Evenings.Finding("bass", "strained", "A2")] };
        NextPlanResult next = NextPlan.From(input);
        Assert.InRange(Lowest(input, next.Plan, "bass"), Pitch.Parse("B2").Midi, 127);
        Assert.Contains(next.Plan.Steps.SelectMany(step => step.Because), reason => reason.Contains("(bass-strained-a2): kept above", StringComparison.Ordinal));
    }

    /// <summary>"s strained" alone is the most that is typed while conducting: the top of that key is meant.</summary>
    [Fact]
    public void Without_a_named_pitch_the_highest_of_the_key_is_spared()
    {
        NextPlanInput input = Growing with { Review = Heard(new SampleMark(1, 4, 3, "s strained", ["soprano"], "strained", "F4")) };
        PlanStep answer = NextPlan.From(input).Plan.Steps.First(step => step.Answers.Contains("sopranos strained in F"));
        Assert.StartsWith("heard on 16 February 2027: sopranos strained in F (1 key): kept below C5, ", answer.Because[0], StringComparison.Ordinal);
        Assert.InRange(Highest(input, new() { Steps = [answer] }, "soprano"), 0, Pitch.Parse("Bb4").Midi);
    }

    [Fact]
    public void A_need_from_a_mark_of_the_rehearsal_is_spared_as_well()
    {
        NextPlanInput input = Growing with { Needs = [new() { Who = "soprano", Pitch = Pitch.Parse("E5"), Kind = "strained", Piece = "Harbour hymn" }] };
        NextPlanResult next = NextPlan.From(input);
        Assert.InRange(Highest(input, next.Plan, "soprano"), 0, Pitch.Parse("D5").Midi);
        Assert.Contains(next.Plan.Steps.SelectMany(step => step.Because), reason => reason.StartsWith("to spare: soprano: strained, E5, for Harbour hymn: kept below, ", StringComparison.Ordinal));
    }

    [Fact]
    public void Where_the_director_asks_for_the_pitch_only_what_answers_that_goes_there_and_it_is_said()
    {
        NextPlanInput input = Growing with { Findings = [Evenings.Finding("soprano", "strained", "E5")], Needs = [new() { Who = "soprano", Pitch = Pitch.Parse("E5") }] };
        NextPlanResult next = NextPlan.From(input);
        PlanStep[] there = [.. next.Plan.Steps.Where(step => Highest(input, new() { Steps = [step] }, "soprano") > Pitch.Parse("D5").Midi)];
        Assert.NotEmpty(there);
        Assert.All(there, step => Assert.Contains("soprano: E5", step.Answers));
        Assert.Equal(["sopranos strained on E5, and needs.yaml asks for it all the same: mark that need as done (warmup need done) to spare them."], next.Unmet);
    }

    [Fact]
    public void Other_findings_of_the_part_up_there_wait()
    {
        NextPlanInput input = Growing with { Findings = [Evenings.Finding("soprano", "strained", "E5"), Evenings.Finding("soprano", "flat", "F5")] };
        Assert.Equal(["sopranos flat on F5: waits, sopranos strained on E5."], NextPlan.From(input).Unmet);
    }

    [Fact]
    public void A_plan_made_by_hand_that_goes_there_is_told_so()
    {
        NextPlanInput input = Growing with { Findings = [Evenings.Finding("soprano", "strained", "E5")] };
        Exercise scale = input.Exercises.Values.First(exercise => exercise.Stage == Stage.Sung && exercise.Voices.Count == 0);
        Plan plan = new() { Minutes = 20, Steps = [new() { ExerciseId = scale.Id, Keys = new() { Limit = "soprano", Start = Pitch.Parse("A4"), ReachPercent = 100 } }] };
        Assert.Contains((-300, "takes the sopranos where they are to be spared (sopranos strained on E5)"), PlanExplanation.Of(input, plan).Steps[0].Parts);
    }

    /// <summary>Half an hour below G4 is too much for these four parts: what is beyond all ease stays out, and who should rest is said.</summary>
    [Fact]
    public void Where_the_minutes_cannot_be_filled_otherwise_the_plan_stays_within_what_is_easy_and_says_who_should_rest()
    {
        NextPlanInput input = Growing with { Minutes = 30, Findings = [Evenings.Finding("alto", "strained", "A4")] };
        NextPlanResult next = NextPlan.From(input);
        Assert.InRange(Highest(input, next.Plan, "alto"), Pitch.Parse("Ab4").Midi, Pitch.Parse("C5").Midi);
        Assert.StartsWith("altos strained on A4, and no plan of these minutes spares the altos throughout: let them rest in the highest keys of ", Assert.Single(next.Unmet), StringComparison.Ordinal);
    }

    private static int Highest(NextPlanInput input, Plan plan, string part) => Spans(input, plan, part).Select(span => span.High.Midi).DefaultIfEmpty().Max();

    private static int Lowest(NextPlanInput input, Plan plan, string part) => Spans(input, plan, part).Min(span => span.Low.Midi);

    private static IEnumerable<PitchRange> Spans(NextPlanInput input, Plan plan, string part) =>
        Evenings.Ready(input, plan).Steps.SelectMany(step => step.Ladder.Rungs).SelectMany(rung => rung.Parts).Where(sung => sung.Sings && sung.Part.Id == part).Select(sung => sung.Span);

    /// <summary>The five-note scale in four keys, D to F.</summary>
    private static SessionReview Heard(SampleMark mark) => SessionReview.From(
        new SampleLog().Started().After(1, new StepStarted(4, "five-note-scale", [62, 63, 64, 65]))
            .Rung(4, 0, "D4", 7).Rung(4, 1, "Eb4", 7).Rung(4, 2, "E4", 7).Rung(4, 3, "F4", 7).Mark(mark).Records,
        SampleChoir.Four,
        SampleExercises.All);
}
