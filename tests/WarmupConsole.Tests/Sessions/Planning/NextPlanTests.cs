using CsCheck;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
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
        Assert.Equal(["heard on 16 February 2027, reached here from below and from above: altos flat in E (1 key), altos flat in E♭ (1 key)"], scale.Because);
        Assert.True(ReachedFromBothSides(next.Plan, "alto", rung => rung.Tonic.Name == "E"));
        Assert.True(ReachedFromBothSides(next.Plan, "alto", rung => rung.Tonic.Name == "E♭"));
    }

    [Fact]
    public void A_single_pitch_is_approached_in_the_octave_of_its_part()
    {
        NextPlanResult next = After(Log().Mark(new(1, 4, 1, "b f on Bb3", ["bass"], "flat", "Eb4", Pitch: Pitch.Parse("Bb3").Midi)));
        Assert.Empty(next.Unmet);
        Assert.True(Approached(next.Plan, "bass", Pitch.Parse("Bb3").Midi));
        Assert.Contains(next.Plan.Steps.SelectMany(step => step.Because), reason => reason.EndsWith(": basses flat on B♭3 (1 key)", StringComparison.Ordinal));
    }

    [Fact]
    public void A_pitch_typed_an_octave_off_is_answered_in_the_octave_that_was_sung()
    {
        NextPlanResult next = After(Log().Mark(new(1, 4, 1, "b f on Bb4", ["bass"], "flat", "Eb4", Pitch: Pitch.Parse("Bb4").Midi)));
        Assert.Empty(next.Unmet);
        Assert.True(Approached(next.Plan, "bass", Pitch.Parse("Bb3").Midi));
    }

    [Fact]
    public void What_was_said_strongly_comes_before_what_was_marked_as_often()
    {
        NextPlanResult next = After(Log().Mark(new(1, 4, 1, "a f on E5", ["alto"], "flat", "Eb4", Pitch: 76)).Mark(new(2, 4, 1, "s very f on A5", ["soprano"], "flat", "Eb4", Pitch: 81, Strength: "very")));
        Assert.Equal(["sopranos very flat on A5", "altos flat on E5"], next.Unmet.Select(sentence => sentence.Split(" (")[0]));
    }

    [Fact]
    public void What_every_part_did_in_one_key_is_one_reason()
    {
        NextPlanResult next = After(Log().Mark(new(1, 4, 2, "all late", [.. SampleChoir.Four.Parts.Select(part => part.Id)], "late", "E4")));
        string reason = Assert.Single(next.Plan.Steps.SelectMany(step => step.Because), reason => reason.Contains("late", StringComparison.Ordinal));
        Assert.EndsWith(": everyone late in E (1 key)", reason, StringComparison.Ordinal);
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
        NextPlanResult next = After(Log().Mark(new(1, 1, 0, "a sb", ["alto"], "short-of-breath")).Mark(new(2, 4, 1, "a f on E5", ["alto"], "flat", "Eb4", Pitch: 76)));
        Assert.Equal(
            [
                "altos short of breath (1 key, 16 February 2027): it belongs to no key, so no ladder answers it; think of it when you choose the step.",
                "altos flat on E5 (1 key, 16 February 2027): no step could be found whose keys come to it from below and from above; plan one by hand.",
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
        Assert.Contains("Only 0 exercises could be exchanged for variety: for the other steps the catalogue has none of the same stage and span that breaks no rule.", next.Unmet);
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

    /// <summary>One round more is too long and one less too short: to and fro would have no end.</summary>
    [Fact]
    public void A_round_that_is_longer_than_what_the_minutes_leave_open_moves_them_once_and_is_told()
    {
        Exercise breath = SampleExercises.All["counted-breath"] with { Phases = [new(BreathAction.In, 60, ""), new(BreathAction.Out, 60, "")], Rounds = 2 };
        Plan last = new() { Minutes = 5, Steps = [new() { ExerciseId = breath.Id, Tempo = Tempo.FromBeatsPerMinute(60), TalkSeconds = 15 }] };
        NextPlanResult next = NextPlan.From(new() { Choir = SampleChoir.Four, Last = last, Exercises = new Dictionary<string, Exercise> { [breath.Id] = breath }, Date = NextWeek });
        Assert.Contains("The steps take 6:15 of the 5 minutes: change the number of steps or the minutes by hand.", next.Unmet);
        Assert.Equal(3, next.Plan.Steps[0].Rounds);
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

    /// <summary>The reason that every step had last week.</summary>
    private const string OldReason = "new tonight, all four parts";

    [Fact]
    public void Reasons_are_of_this_week()
    {
        NextPlanResult next = NextPlan.From(Input(Log()) with { Last = Explained(60) });
        Assert.DoesNotContain(OldReason, next.Plan.Steps.SelectMany(step => step.Because));
        Assert.All(next.Plan.Steps, step => Assert.NotEmpty(step.Because));
        Assert.Contains("as on 16 February, for scale motion and legato", next.Plan.Steps.SelectMany(step => step.Because));
    }

    [Fact]
    public void The_long_talk_before_a_new_exercise_is_not_needed_again_but_any_other_is_kept()
    {
        NextPlanInput input = Input(Log()) with { Last = Explained(60) };
        PlanStep known = NextPlan.From(input).Plan.Steps.Single(step => step.ExerciseId == "counted-breath");
        Assert.Null(known.TalkSeconds);
        Assert.Contains("known by now: 15 s of talk instead of 60 s", known.Because);

        PlanStep usual = NextPlan.From(input with { Earlier = [SamplePlans.Calm] }).Plan.Steps.Single(step => step.ExerciseId == "counted-breath");
        Assert.Equal(60, usual.TalkSeconds);
    }

    [Fact]
    public void A_sung_exercise_that_is_new_to_the_choir_gets_a_minute_of_talk()
    {
        NextPlanInput input = Input(Log());
        PlanStep[] exchanged =
        [
            .. Enumerable.Range(0, 10).SelectMany(week => Changed(NextPlan.From(input with { Date = NextWeek.AddDays(7 * week) }).Plan))
                .Where(step => SampleExercises.All[step.ExerciseId].Stage == Stage.Sung),
        ];
        Assert.NotEmpty(exchanged);
        Assert.All(exchanged, step => Assert.Equal((60, "new to the choir: 60 s to explain it"), (step.TalkSeconds, step.Because[1])));

        Plan all = SamplePlans.Of(15, [.. SampleExercises.All.Keys]);
        Assert.All(Changed(NextPlan.From(input with { Earlier = [all] }).Plan), step => Assert.Null(step.TalkSeconds));
    }

    [Fact]
    public void A_step_that_was_not_reached_comes_again_and_says_so()
    {
        SessionReview review = SessionReview.From(Log().Records, SampleChoir.Four, SampleExercises.All, SamplePlans.Calm);
        NextPlanResult next = NextPlan.From(Input(Log()) with { Review = review });
        Assert.Equal(["shoulder-rolls", "hum-thirds", "trill-fifth", "thirds-climb", "arpeggio", "sighing-hum"], review.NotBegun.Select(step => step.ExerciseId));
        Assert.Equal(6, next.Plan.Steps.Count(step => step.Because.Contains("left out on 16 February, so it comes again")));
        Assert.Equal(2, next.Differences.Count(line => line.StartsWith("+ ", StringComparison.Ordinal)));
        Assert.Contains("= Shoulder rolls: left out on 16 February, so it comes again", next.Differences);
    }

    [Fact]
    public void An_exercise_in_parts_is_never_given_to_one_part_alone()
    {
        Dictionary<string, Exercise> inParts = SampleExercises.All.ToDictionary(pair => pair.Key, pair => pair.Value with
        {
            Voices = pair.Value.Pattern is { } pattern ? [new(["tenor", "bass"], pattern, Beats.Zero)] : [],
        });
        SampleLog log = Log().Mark(new(1, 4, 1, "b st on D4", ["bass"], "strained", "Eb4", Pitch: 62)).Mark(new(2, 4, 1, "a f", ["alto"], "flat", "Eb4"));
        NextPlanResult next = NextPlan.From(Input(log) with { Exercises = inParts, Last = SamplePlans.WithAllKeys(new() { MostKeys = 8 }, SamplePlans.Calm) });
        Assert.DoesNotContain(next.Plan.Steps, step => SampleChoir.Four.Parts.Any(part => part.Id == step.Keys.Limit));
        Assert.Contains(next.Unmet, sentence => sentence.StartsWith("basses strained on D4", StringComparison.Ordinal));
        Assert.Contains(next.Plan.Steps, step => step.Because.Any(reason => reason.Contains("altos flat in E♭", StringComparison.Ordinal)));
    }

    [Fact]
    public void An_exchange_keeps_the_span_of_its_step_and_breaks_no_rule() => Assert.All(Enumerable.Range(0, 20), week =>
    {
        Plan last = SamplePlans.WithAllKeys(new() { MostKeys = 6 }, SamplePlans.Of(12, "counted-breath", "hum-thirds", "trill-fifth", "five-note-scale", "thirds-climb", "octave-arpeggio", "sighing-hum"));
        NextPlanResult next = NextPlan.From(Input(Log()) with { Review = null, Last = last, Date = NextWeek.AddDays(7 * week) });
        Assert.Contains(next.Plan.Steps, step => step.ExerciseId == "octave-arpeggio");
        Assert.Equal(2, next.Differences.Count(line => line.StartsWith("+ ", StringComparison.Ordinal)));
        Assert.Equal(last.Steps.Select(SpanOf).Zip(next.Plan.Steps.Select(SpanOf), (before, after) => Math.Abs(after - before) <= 3), last.Steps.Select(_ => true));
        Assert.All(Enum.GetValues<PlanSeverity>(), severity => Assert.True(Remarks(next.Plan, severity) <= Remarks(last, severity)));
    });

    private static int SpanOf(PlanStep step) =>
        SampleExercises.All[step.ExerciseId] is { Pattern: { } pattern } exercise ? ExerciseDemands.Of(pattern, exercise.Mode).SpanSemitones : 0;

    private static int Remarks(Plan plan, PlanSeverity severity) => PlanCheck.Check(SamplePlans.Ready(plan)).Count(remark => remark.Severity == severity && remark.Rule != "planned-length");

    /// <summary>Last week's exercises, what the check calls wrong in them, and how that is mended.</summary>
    [Theory]
    [InlineData("arpeggio five-note-scale thirds-climb sighing-hum", "breath-first half-closed-first closed-vowel-first", "added since breath comes before sound")]
    [InlineData("counted-breath five-note-scale thirds-climb even-vowels hum-thirds sighing-hum", "half-closed-first", "moved here since half-closed sounds come before full singing")]
    [InlineData("hum-thirds counted-breath five-note-scale thirds-climb sighing-hum", "breath-first", "moved here since breath comes before sound")]
    [InlineData("counted-breath hum-thirds arpeggio sighing-hum", "closed-vowel-first", "added since a closed vowel is the first one sung")]
    public void What_the_last_plan_lacks_is_added_or_put_in_its_place(string exercises, string rules, string because)
    {
        Plan last = SamplePlans.WithAllKeys(new() { MostKeys = 6 }, SamplePlans.Of(10, exercises.Split(' ')));
        Assert.Equal(rules, string.Join(' ', Errors(last)));
        NextPlanResult next = NextPlan.From(Input(Log()) with { Review = null, Last = last });
        Assert.Empty(Errors(next.Plan));
        Assert.Contains(next.Plan.Steps.SelectMany(step => step.Because), reason => reason == because + " (common practice)");
    }

    [Fact]
    public void Extremes_that_come_too_early_are_held_back()
    {
        Plan last = SamplePlans.Calm.WithKeys(4, new() { Limit = "soprano", ReachPercent = 100 });
        Assert.Equal(["extremes-late"], Errors(last));
        NextPlanResult next = NextPlan.From(Input(Log()) with { Review = null, Last = last });
        Assert.Empty(Errors(next.Plan));
        Assert.Contains(next.Differences, line => line.Contains("kept within the comfortable range", StringComparison.Ordinal));
    }

    [Fact]
    public void What_nothing_mends_is_said()
    {
        Dictionary<string, Exercise> few = SampleExercises.All.Where(pair => pair.Value.Stage != Stage.Breathing).ToDictionary();
        NextPlanResult next = NextPlan.From(Input(Log()) with { Review = null, Last = SamplePlans.Of(10, "hum-thirds", "five-note-scale"), Exercises = few });
        Assert.StartsWith("Nothing in the catalogue mends this: Step 1", next.Unmet[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_rule_stays_off_only_where_the_new_plan_would_break_it()
    {
        Plan last = SamplePlans.Calm with { Off = [new("rehearsal-share", "a short evening"), new("breath-first", "we breathed outside")] };
        NextPlanInput input = Input(Log()) with { Last = last };
        Assert.Empty(NextPlan.From(input).Plan.Off);

        NextPlanResult shortly = NextPlan.From(input with { Last = SamplePlans.Of(8, "hum-thirds", "five-note-scale", "thirds-climb", "sighing-hum") with { Off = last.Off } });
        Assert.Equal([new("rehearsal-share", "as on 16 February: a short evening"), new("breath-first", "as on 16 February: we breathed outside")], shortly.Plan.Off);
    }

    private static string[] Errors(Plan plan) => [.. PlanCheck.Check(SamplePlans.Ready(plan)).Where(remark => remark.Severity == PlanSeverity.Error).Select(remark => remark.Rule)];

    private static Plan Explained(int talk) => SamplePlans.Calm with { Steps = [.. SamplePlans.Calm.Steps.Select(step => step with { TalkSeconds = talk, Because = [OldReason] })] };

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
    private static SampleLog Log() => new SampleLog().Started().After(1, new StepStarted(1, "counted-breath", [])).After(5, new RoundStarted(1, 0))
        .After(55, new StepStarted(4, "five-note-scale", [62, 63, 64, 65]))
        .Rung(4, 0, "D4", 7).Rung(4, 1, "Eb4", 7).Rung(4, 2, "E4", 7).Rung(4, 3, "F4", 7);
}
