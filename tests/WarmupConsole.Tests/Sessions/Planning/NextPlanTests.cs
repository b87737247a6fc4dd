using CsCheck;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Next;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Tests.Sessions.Marks;
using WarmupConsole.Tests.Sessions.Review;

namespace WarmupConsole.Tests.Sessions.Planning;

public sealed class NextPlanTests
{
    private static readonly DateOnly NextWeek = new(2027, 2, 23);

    [Fact]
    public void What_was_marked_in_a_key_is_approached_from_both_sides_and_says_why()
    {
        NextPlanResult next = After(Log().Mark(new(1, 4, 2, "a f", ["alto"], "flat", "E4")).Mark(new(2, 4, 1, "a f in E", ["alto"], "flat", "E4", Named: true)).Mark(new(3, 4, 1, "a f", ["alto"], "flat", "Eb4")));
        Assert.Empty(next.Unmet);
        PlanStep scale = Assert.Single(next.Plan.Steps, step => step.ExerciseId == "five-note-scale");
        Assert.Contains("altos flat in E (1 key, 16 February 2027): reached from below and from above", scale.Because);
        Assert.Contains("altos flat in E♭ (1 key, 16 February 2027): reached from below and from above", scale.Because);
        Assert.True(ReachedFromBothSides(next.Plan, "alto", rung => rung.Tonic.Name == "E"));
        Assert.True(ReachedFromBothSides(next.Plan, "alto", rung => rung.Tonic.Name == "E♭"));
    }

    [Fact]
    public void A_single_pitch_is_approached_in_the_octave_of_its_part()
    {
        NextPlanResult next = After(Log().Mark(new(1, 4, 1, "b f on Bb3", ["bass"], "flat", "Eb4", Pitch: Pitch.Parse("Bb3").Midi)));
        Assert.Empty(next.Unmet);
        Assert.True(Approached(next.Plan, "bass", Pitch.Parse("Bb3").Midi));
        Assert.Contains(next.Plan.Steps.SelectMany(step => step.Because), reason => reason.StartsWith("basses flat on B♭3 (1 key", StringComparison.Ordinal));
    }

    [Fact]
    public void What_every_part_did_in_one_key_is_one_reason()
    {
        NextPlanResult next = After(Log().Mark(new(1, 4, 2, "all late", [.. SampleChoir.Four.Parts.Select(part => part.Id)], "late", "E4")));
        string reason = Assert.Single(next.Plan.Steps.SelectMany(step => step.Because), reason => reason.Contains("late", StringComparison.Ordinal));
        Assert.StartsWith("everyone late in E (1 key", reason, StringComparison.Ordinal);
    }

    [Fact]
    public void An_answer_begins_near_middle_C()
    {
        NextPlanResult next = After(Log().Mark(new(1, 4, 2, "t st on E4", ["tenor"], "strained", "E4", Pitch: Pitch.Parse("E4").Midi)));
        IEnumerable<PlanStep> answers = next.Plan.Steps.Where(step => step.Because.Any(reason => reason.Contains("strained", StringComparison.Ordinal)));
        Assert.All(answers, step => Assert.InRange(step.Keys.Start!.Value.Midi, Pitch.MiddleC.Midi - 5, Pitch.MiddleC.Midi + 5));
        Assert.Equal(next.Unmet.Count == 0, answers.Any());
    }

    [Theory]
    [InlineData("strained", Stage.Humming)]
    [InlineData("tired", Stage.Humming)]
    [InlineData("sharp", Stage.Sung)]
    public void What_tires_is_answered_on_half_closed_sounds(string kind, Stage stage)
    {
        NextPlanResult next = After(Log().Mark(new(1, 4, 1, "raw", ["alto"], kind, "Eb4")));
        PlanStep answer = Assert.Single(next.Plan.Steps, step => step.Because.Any(reason => reason.Contains("from below and from above", StringComparison.Ordinal)));
        Assert.Equal(stage, SampleExercises.All[answer.ExerciseId].Stage);
    }

    [Fact]
    public void Praise_free_notes_and_marks_taken_back_change_no_ladder()
    {
        NextPlanResult plain = After(Log());
        NextPlanResult praised = After(Log().Mark(new(1, 4, 1, "a good", ["alto"], "good", "Eb4")).Mark(new(2, 4, 1, "windows", [], null, "Eb4")));
        Assert.Equal(plain.Differences, praised.Differences);
    }

    [Fact]
    public void What_cannot_be_answered_is_said()
    {
        NextPlanResult next = After(Log().Mark(new(1, 1, 0, "a sb", ["alto"], "short-of-breath")).Mark(new(2, 4, 1, "a f on C6", ["alto"], "flat", "Eb4", Pitch: 84)));
        Assert.Equal(
            [
                "altos short of breath (1 key, 16 February 2027): it belongs to no key, so no ladder answers it; think of it when you choose the step.",
                "altos flat on C6 (1 key, 16 February 2027): no step could be found whose keys come to it from below and from above; plan one by hand.",
            ],
            next.Unmet);
    }

    [Fact]
    public void Without_a_log_two_exercises_are_exchanged_and_the_difference_names_each_step()
    {
        NextPlanResult next = NextPlan.From(new() { Choir = SampleChoir.Four, Last = SamplePlans.Calm, Exercises = SampleExercises.All, Date = NextWeek });
        Assert.Equal(NextWeek, next.Plan.Date);
        Assert.Equal(2, next.Differences.Count(line => line.StartsWith("- ", StringComparison.Ordinal)));
        Assert.Equal(2, next.Differences.Count(line => line.StartsWith("+ ", StringComparison.Ordinal)));
        Assert.Contains("= Shoulder rolls", next.Differences);
        Assert.All(Changed(next.Plan), step => Assert.Contains("instead of", step.Because[0], StringComparison.Ordinal));
    }

    [Fact]
    public void When_the_catalogue_has_nothing_else_it_says_so()
    {
        Dictionary<string, Exercise> few = SamplePlans.Calm.Steps.ToDictionary(step => step.ExerciseId, step => SampleExercises.All[step.ExerciseId]);
        NextPlanResult next = NextPlan.From(new() { Choir = SampleChoir.Four, Last = SamplePlans.Calm, Exercises = few, Date = NextWeek });
        Assert.Contains("Only 0 exercises could be exchanged for variety: the catalogue has no other ones for these stages.", next.Unmet);
    }

    [Fact]
    public void An_unknown_exercise_in_the_last_plan_is_refused_by_name()
    {
        NextPlanInput input = new() { Choir = SampleChoir.Four, Last = SamplePlans.Of(15, "lost"), Exercises = SampleExercises.All, Date = NextWeek };
        Assert.Contains("'lost'", Assert.Throws<ArgumentException>(() => NextPlan.From(input)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(11)]
    [InlineData(17)]
    public void Minutes_are_kept_by_fewer_or_more_keys_and_rounds(int minutes)
    {
        Plan last = SamplePlans.Calm with { Minutes = minutes, Steps = [.. SamplePlans.Calm.Steps.Select(step => step with { Keys = step.Keys with { MostKeys = 6 } })] };
        NextPlanResult next = NextPlan.From(new() { Choir = SampleChoir.Four, Last = last, Exercises = SampleExercises.All, Date = NextWeek });
        Assert.Empty(next.Unmet);
        Assert.InRange(SamplePlans.Ready(next.Plan).Planned.TotalMinutes, minutes * 0.9, minutes * 1.1);
    }

    /// <summary>Whatever a few marks say in any week: the laws of a proposal hold.</summary>
    [Fact]
    public void Every_proposal_is_repeatable_in_order_in_time_and_answers_its_marks() =>
        Gen.Select(AnyMark.Array[0, 3], Gen.Int[0, 60]).Sample((marks, week) =>
        {
            SampleLog log = marks.Index().Aggregate(Log(), (log, mark) => mark.Item.AddTo(log, mark.Index + 1));
            NextPlanInput input = Input(log) with { Date = NextWeek.AddDays(7 * week) };
            NextPlanResult next = NextPlan.From(input);
            Warmup ready = SamplePlans.Ready(next.Plan);
            Assert.Equal(next.Differences, NextPlan.From(input).Differences);
            Assert.DoesNotContain(PlanCheck.Check(ready), remark => remark.Severity == PlanSeverity.Error);
            Assert.DoesNotContain(PlanCheck.Check(ready), remark => remark.Rule == "stage-order");
            Assert.InRange(ready.Planned.TotalMinutes, 13.5, 16.5);
            Assert.True(Changed(next.Plan).Count >= 2);
            Assert.Empty(next.Unmet);
            Assert.All(input.Review!.Marks.Where(mark => !mark.IsPraise), mark => Assert.True(IsAnswered(next.Plan, mark)));
        }, iter: 60);

    private static Gen<AnyMark> AnyMark => Gen.Select(Gen.Int[0, 3], Gen.Int[0, 2], Gen.Int[0, 3], Gen.Bool).Select(t => new AnyMark(t.Item1, t.Item2, t.Item3, t.Item4));

    private static bool IsAnswered(Plan plan, ReviewMark mark) => mark.Pitches.Count == 1
        ? Approached(plan, mark.Part, mark.Pitches[0].Midi)
        : ReachedFromBothSides(plan, mark.Part, rung => rung.Tonic.Name == mark.Key!.Value.Name);

    private static bool ReachedFromBothSides(Plan plan, string part, Func<Rung, bool> isMeant)
    {
        int[] moves =
        [
            .. from step in SamplePlans.Ready(plan).Steps
               from pair in step.Ladder.Rungs.Zip(step.Ladder.Rungs.Skip(1))
               where Sings(pair.First, part) && Sings(pair.Second, part) && isMeant(pair.Second)
               select Math.Sign(pair.Second.Tonic.Midi - pair.First.Tonic.Midi),
        ];
        return moves.Contains(1) && moves.Contains(-1);
    }

    private static bool Approached(Plan plan, string part, int midi) => SamplePlans.Ready(plan).Steps.Any(step =>
        ReachedFromBothSides(plan with { Steps = [step.Plan] }, part, rung => step.Exercise.IsSung && PitchesOf(step.Exercise, rung, part).Contains(midi)));

    /// <summary>Counted from the part's lowest note, not from the tonic as the source does.</summary>
    private static IEnumerable<int> PitchesOf(Exercise exercise, Rung rung, string part)
    {
        int[] intervals = [.. exercise.Pattern!.Notes.Where(note => note.Degree is not null).Select(note => ModeData.IntervalOf(exercise.Mode, note.Degree!.Value).Semitones)];
        int low = rung.Parts.First(sung => sung.Part.Id == part).Span.Low.Midi;
        return intervals.Select(interval => low + interval - intervals.Min());
    }

    private static bool Sings(Rung rung, string part) => rung.Parts.Any(sung => sung.Part.Id == part && sung.Sings);

    private static List<PlanStep> Changed(Plan plan) => [.. plan.Steps.Where(step => !SamplePlans.Calm.Steps.Select(old => old.ExerciseId).Contains(step.ExerciseId))];

    private static NextPlanResult After(SampleLog log) => NextPlan.From(Input(log));

    private static NextPlanInput Input(SampleLog log) => new()
    {
        Choir = SampleChoir.Four,
        Last = SamplePlans.Calm,
        Exercises = SampleExercises.All,
        Review = SessionReview.From(log.Records, SampleChoir.Four, SampleExercises.All),
        Date = NextWeek,
    };

    /// <summary>The calm plan led as far as the five-note scale, which was sung in four keys.</summary>
    private static SampleLog Log() => new SampleLog().Started().After(1, new StepStarted(1, "counted-breath", []))
        .After(60, new StepStarted(4, "five-note-scale", [62, 63, 64, 65]))
        .Rung(4, 0, "D4", 7).Rung(4, 1, "Eb4", 7).Rung(4, 2, "E4", 7).Rung(4, 3, "F4", 7);
}
