using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Findings.Estimates;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Next;
using WarmupConsole.Sessions.Planning.Seasons;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Tests.Sessions.Marks;
using WarmupConsole.Tests.Sessions.Review;

namespace WarmupConsole.Tests.Sessions.Planning;

public sealed class NextPlanTests
{
    private static readonly NextPlanInput Usual = Evenings.Usual;

    [Fact]
    public void A_finding_is_approached_from_both_sides_for_its_part_and_names_its_evidence()
    {
        NextPlanResult next = NextPlan.From(Usual with { Findings = [Evenings.Finding("alto", "flat", "B4")] });
        PlanStep[] answers = [.. next.Plan.Steps.Where(step => step.Answers.Contains("alto-flat-b4"))];
        Assert.NotEmpty(answers);
        Assert.All(answers, step => Assert.True(Approaches.Pitch(Ready(step), "alto", Pitch.Parse("B4").Midi)));
        Assert.All(answers, step => Assert.Equal("altos flat on B4, marked in about 8 of 24 keys in 2 sessions (alto-flat-b4): reached here from below and from above", step.Because[0]));
        Assert.Equal("15 minutes: altos flat on B4", next.Plan.Title);
        Assert.Empty(next.Unmet);
    }

    [Fact]
    public void A_finding_is_worked_on_where_it_fails()
    {
        Circumstance onA = new(Aspect.Vowel, "ɑ", Rate.Of(7, 10), Rate.Of(1, 14), 0.001);
        NextPlanResult next = NextPlan.From(Usual with { Findings = [Evenings.Finding("soprano", "flat", "D5", onA)] });
        PlanStep answer = next.Plan.Steps.First(step => step.Because.Contains("on [ɑ], where it fails most"));
        Assert.True(Approaches.Pitch(Ready(answer), "soprano", Pitch.Parse("D5").Midi, "ɑ"));
    }

    [Fact]
    public void What_was_marked_last_time_is_approached_in_the_octave_of_its_part()
    {
        NextPlanResult next = NextPlan.From(After(new SampleMark(1, 4, 1, "b f on Bb4", ["bass"], "flat", "Eb4", Pitch: Pitch.Parse("Bb4").Midi)));
        PlanStep answer = next.Plan.Steps.First(step => step.Answers.Contains("basses flat on B♭3"));
        Assert.True(Approaches.Pitch(Ready(answer), "bass", Pitch.Parse("Bb3").Midi));
        Assert.Equal("heard on 16 February 2027, reached here from below and from above: basses flat on B♭3 (1 key)", answer.Because[0]);
    }

    [Fact]
    public void A_wish_from_a_score_carries_its_piece_and_bars()
    {
        ChoirNeed need = new() { Who = "soprano", Pitch = Pitch.Parse("E5"), Piece = "Harbour hymn", Bars = "12-15" };
        NextPlanResult next = NextPlan.From(Usual with { Needs = [need] });
        Assert.Contains(next.Plan.Steps.SelectMany(step => step.Because), reason => reason.EndsWith("soprano: E5, for Harbour hymn, bars 12-15", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Purpose.HalfSteps)]
    [InlineData(Purpose.Canon)]
    [InlineData(Purpose.Swell)]
    public void A_purpose_that_is_asked_for_is_served(Purpose purpose)
    {
        NextPlanResult next = NextPlan.From(Usual with { Needs = [new() { Who = LadderSpec.Everyone, Purpose = purpose }] });
        Assert.Contains(next.Plan.Steps, step => Usual.Exercises[step.ExerciseId].Purposes.Contains(purpose) && step.Because.Any(reason => reason.StartsWith("asked for: ", StringComparison.Ordinal)));
    }

    [Fact]
    public void What_the_director_focuses_on_counts_most()
    {
        int Staccato(NextPlanInput input) => NextPlan.From(input).Plan.Steps.Count(step => Usual.Exercises[step.ExerciseId].Purposes.Contains(Purpose.Staccato));
        Plan touched = Usual.Last! with { Steps = [.. Usual.Exercises.Values.Where(exercise => exercise.Purposes.Contains(Purpose.Staccato)).Select(exercise => new PlanStep { ExerciseId = exercise.Id })] };
        NextPlanInput lately = Usual with { Last = touched, Minutes = 10 };
        Assert.True(Staccato(lately with { Focus = PlanFocus.Read("touch.staccato", Usual.Choir, []) }) >= Math.Max(1, Staccato(lately)));
        Assert.Null(PlanFocus.Read("swimming", Usual.Choir, []));
        Assert.Equal(["alto"], PlanFocus.Read(" Alto ", Usual.Choir, [])!.Parts);
        Assert.Equal(6, PlanFocus.Read("tuning", Usual.Choir, [])!.Purposes.Count);
    }

    [Fact]
    public void At_most_one_exercise_is_new_and_it_gets_time_to_be_explained()
    {
        HashSet<string> known = [.. Evenings.Weeks.SelectMany(plan => plan.Steps).Select(step => step.ExerciseId)];
        PlanStep[] fresh = [.. Enumerable.Range(1, 4).SelectMany(variant => NextPlan.From(Usual with { Variant = variant }).Plan.Steps).Where(step => !known.Contains(step.ExerciseId))];
        Assert.InRange(fresh.Length, 1, 4);
        Assert.All(fresh.Where(step => Usual.Exercises[step.ExerciseId].IsSung), step => Assert.True(step.TalkSeconds >= 60));
        Assert.All(fresh, step => Assert.Contains(step.Because, reason => reason.StartsWith("new to the choir", StringComparison.Ordinal)));
    }

    [Fact]
    public void What_last_time_never_came_to_comes_again()
    {
        SessionReview review = SessionReview.From(Log([]).Records, SampleChoir.Four, SampleExercises.All, SamplePlans.Calm);
        NextPlanResult next = NextPlan.From(Small with { Review = review });
        PlanStep[] owed = [.. next.Plan.Steps.Where(step => step.Because.Contains("left out on 16 February, so it comes again"))];
        Assert.NotEmpty(owed);
        Assert.DoesNotContain(owed.SelectMany(step => step.Because), reason => reason.StartsWith("as on", StringComparison.Ordinal));
    }

    [Fact]
    public void Reach_grows_towards_the_concert_and_in_its_week_nothing_is_new()
    {
        NextPlanInput WeeksBefore(int weeks) => Usual with { Choir = SampleChoir.Four with { Concerts = [new(Usual.Date.AddDays((7 * weeks) + 4), "Spring concert")] }, Minutes = 20 };
        NextPlanResult[] plans = [NextPlan.From(WeeksBefore(10)), NextPlan.From(WeeksBefore(1)), NextPlan.From(WeeksBefore(0))];
        Assert.Equal([SeasonPhase.Growing, SeasonPhase.Growing, SeasonPhase.ConcertWeek], plans.Select(plan => plan.Season.Phase));
        int[] reach = [.. plans.Select(plan => plan.Plan.Steps.Max(step => step.Keys.ReachPercent))];
        Assert.True(reach[1] > reach[0] && reach[2] <= 25, string.Join(' ', reach));
        Assert.DoesNotContain(plans[2].Plan.Steps.SelectMany(step => step.Because), reason => reason.StartsWith("new to the choir", StringComparison.Ordinal));
    }

    [Fact]
    public void Tonight_counts_a_part_that_is_away_is_not_planned_for_and_colds_reach_nowhere()
    {
        Tonight away = new() { Parts = [new("bass", 0, false, false)] };
        NextPlanInput input = Usual with { Choir = away.Of(Usual.Choir), Tonight = away };
        Assert.DoesNotContain(Evenings.Ready(input, NextPlan.From(input).Plan).Steps.SelectMany(step => step.Ladder.Rungs).SelectMany(rung => rung.Parts), part => part.Part.Id == "bass");

        Tonight colds = new() { Parts = [.. Usual.Choir.Parts.Select(part => new PartTonight(part.Id, null, true, false))] };
        NextPlanInput ill = Usual with { Choir = colds.Of(Usual.Choir), Tonight = colds };
        Plan plan = NextPlan.From(ill).Plan;
        Assert.All(Evenings.Ready(ill, plan).Steps.SelectMany(step => step.Ladder.Rungs).SelectMany(rung => rung.Parts).Where(part => part.Sings), part => Assert.True(part.Part.Range.Comfortable.Contains(part.Span)));
        Assert.Contains(plan.Steps.SelectMany(step => step.Because), reason => reason == "gentle, for the voices of tonight");
    }

    [Fact]
    public void Variants_are_unlike_each_other_and_each_comes_again()
    {
        string[] plans = [.. Enumerable.Range(1, 3).Select(variant => Exercises(NextPlan.From(Usual with { Variant = variant }).Plan))];
        Assert.Equal(3, plans.Distinct().Count());
        Assert.Equal(plans[2], Exercises(NextPlan.From(Usual with { Variant = 3 }).Plan));
    }

    [Fact]
    public void The_order_in_which_exercises_and_findings_are_handed_over_changes_nothing()
    {
        Dictionary<string, Exercise> turned = Usual.Exercises.Reverse().ToDictionary();
        Assert.Equal(NextPlan.From(Usual).Differences, NextPlan.From(Usual with { Exercises = turned }).Differences);
    }

    [Fact]
    public void Without_any_plan_or_log_a_first_plan_is_made_and_that_is_said()
    {
        NextPlanResult next = NextPlan.From(Usual with { Last = null, Earlier = [], Minutes = null });
        Assert.Equal(15, next.Plan.Minutes);
        Assert.Equal(["No plan and no log tells yet what this choir has sung: nothing counts as new, and there is nothing to vary from."], next.Unmet);
        Assert.All(next.Differences.Where(line => !line.StartsWith(' ')), line => Assert.StartsWith("+ ", line, StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_gone_or_cannot_be_met_is_said_with_the_nearest_plan()
    {
        NextPlanResult next = NextPlan.From(After(
            new(1, 1, 0, "a sb", ["alto"], "short-of-breath"),
            new(2, 4, 1, "x f", ["baritone"], "flat", "Eb4")) with
        {
            Last = SamplePlans.Of(15, "lost", "counted-breath"),
            Findings = [Evenings.Finding("soprano", "flat", "C7")],
        });
        Assert.Equal(
            [
                "sopranos flat on C7: no step in this plan comes to it from below and from above; give it more minutes, or plan one by hand.",
                "altos short of breath (1 key, 16 February 2027): it belongs to no key, so no ladder answers it; think of it when you choose the step.",
                "The last plan had 'lost', which is neither in the catalogue nor in exercises/ any more: it is left out.",
                "A mark of last time names the part 'baritone', which this choir does not have: it is left out.",
            ],
            next.Unmet.Where(sentence => !sentence.Contains("in E♭", StringComparison.Ordinal)));
    }

    [Fact]
    public void Where_the_catalogue_is_too_small_the_nearest_plan_says_what_is_wrong_with_it()
    {
        Dictionary<string, Exercise> few = SampleExercises.All.Where(pair => pair.Value.Stage is Stage.Humming or Stage.Sung).ToDictionary();
        NextPlanResult next = NextPlan.From(Small with { Exercises = few, Last = SamplePlans.Of(30, "hum-thirds"), Minutes = 30 });
        Assert.Contains(next.Unmet, sentence => sentence.StartsWith("Nothing in the catalogue mends this: Step 1", StringComparison.Ordinal));
        Assert.Contains(next.Unmet, sentence => sentence.StartsWith("The nearest plan takes ", StringComparison.Ordinal));
        Assert.NotEmpty(next.Plan.Steps);
        Assert.Equal(["There is no exercise that this choir can sing: look at the ranges in choir.yaml (warmup ranges)."], NextPlan.From(Small with { Exercises = new Dictionary<string, Exercise>(), Last = null }).Unmet.Take(1));
    }

    [Fact]
    public void A_rule_stays_off_only_where_the_new_plan_would_break_it()
    {
        Plan last = SamplePlans.Calm with { Off = [new("rehearsal-share", "a short evening"), new("breath-first", "we breathed outside")] };
        Assert.Empty(NextPlan.From(Small with { Last = last }).Plan.Off);
        Assert.Equal([new("rehearsal-share", "as on 16 February: a short evening")], NextPlan.From(Small with { Last = last, Minutes = 25 }).Plan.Off);
    }

    [Fact]
    public void A_quick_exercise_grows_quicker_when_it_stays_and_a_learnt_talk_is_kept()
    {
        Exercise[] all = [.. Usual.Exercises.Values.Where(exercise => exercise.IsSung && exercise.Purposes.Contains(Purpose.Quick) && exercise.Tempo.Quickest > exercise.Tempo.Default)];
        NextPlanInput kept = Usual with
        {
            Last = new() { Date = Usual.Date.AddDays(-7), Steps = [.. all.Select(exercise => new PlanStep { ExerciseId = exercise.Id })] },
            LearntTalk = Usual.Exercises.Keys.ToDictionary(id => id, _ => 25),
            Focus = PlanFocus.Read("time.quick", Usual.Choir, []),
        };
        PlanStep step = NextPlan.From(kept).Plan.Steps.First(step => all.Any(exercise => exercise.Id == step.ExerciseId));
        Exercise quick = Usual.Exercises[step.ExerciseId];
        Assert.True(step.Tempo > quick.Tempo.Default && step.Tempo <= quick.Tempo.Quickest);
        Assert.Contains(step.Because, reason => reason.StartsWith("a little quicker: ", StringComparison.Ordinal));
        Assert.Equal(25, step.TalkSeconds);
    }

    [Fact]
    public void The_difference_names_what_stays_what_changes_what_comes_and_what_goes()
    {
        NextPlanResult next = NextPlan.From(Usual);
        string[] heads = [.. next.Differences.Where(line => !line.StartsWith(' '))];
        Assert.Equal(next.Plan.Steps.Count + Usual.Last!.Steps.Count(old => next.Plan.Steps.All(step => step.ExerciseId != old.ExerciseId)), heads.Length);
        Assert.All(heads, line => Assert.Matches("^[=~+-] ", line));
        Assert.Contains(heads, line => line.StartsWith("- ", StringComparison.Ordinal));
        Assert.Contains(heads, ComesBack);
        Assert.All(
            Evenings.Ready(Usual, next.Plan).Steps.Zip(heads).Where(pair => !pair.Second.StartsWith('=')),
            pair => Assert.Equal(pair.First.Ladder.Rungs.DistinctBy(rung => rung.Tonic).Count() < pair.First.Ladder.Rungs.Count, ComesBack(pair.Second)));
    }

    private static bool ComesBack(string head) => head.Split(" (")[0].EndsWith(" and back", StringComparison.Ordinal);

    private static string Exercises(Plan plan) => string.Join(' ', plan.Steps.Select(step => step.ExerciseId));

    private static WarmupStep Ready(PlanStep step) => Evenings.Ready(Usual, new() { Steps = [step] }).Steps[0];

    private static NextPlanInput Small { get; } = new() { Choir = SampleChoir.Four, Last = SamplePlans.Calm, Exercises = SampleExercises.All, Date = Evenings.NextWeek };

    private static NextPlanInput After(params SampleMark[] marks) => Usual with { Review = SessionReview.From(Log(marks).Records, SampleChoir.Four, SampleExercises.All) };

    /// <summary>The calm plan led as far as the five-note scale, which was sung in four keys.</summary>
    private static SampleLog Log(SampleMark[] marks) => marks.Aggregate(
        new SampleLog().Started().After(1, new StepStarted(1, "counted-breath", [])).After(5, new RoundStarted(1, 0))
            .After(55, new StepStarted(4, "five-note-scale", [62, 63, 64, 65]))
            .Rung(4, 0, "D4", 7).Rung(4, 1, "Eb4", 7).Rung(4, 2, "E4", 7).Rung(4, 3, "F4", 7),
        (log, mark) => log.Mark(mark));
}
