using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Tests.Sessions.Marks;

namespace WarmupConsole.Tests.Sessions.Planning;

/// <summary>The rules that hint and warn: for each a table of plans that pass and plans that do not.</summary>
public sealed class PlanRuleTests
{
    private const string Good = "counted-breath hum-thirds five-note-scale even-vowels octave-arpeggio sighing-hum";

    /// <summary>Rule, number of remarks, minutes, exercises in order.</summary>
    public static TheoryData<string, int, int, string> Exercises => new()
    {
        { "purpose-coverage", 0, 10, "counted-breath hum-thirds" },
        { "purpose-coverage", 1, 15, "counted-breath hum-thirds" },
        { "purpose-coverage", 1, 15, "hum-fifth five-note-scale thirds-climb" },
        { "purpose-coverage", 1, 12, "hum-fifth trill-fifth octave-arpeggio" },
        { "settle-after-peak", 0, 15, "hum-thirds five-note-scale" },
        { "narrow-before-open", 0, 15, "falling-five five-note-scale even-vowels arpeggio octave-arpeggio" },
        { "narrow-before-open", 1, 15, "arpeggio even-vowels thirds-climb five-note-scale" },
        { "narrow-before-open", 0, 15, "arpeggio even-vowels five-note-scale" },
        { "small-before-wide", 0, 15, "repeated-tone even-vowels five-note-scale octave-arpeggio" },
    };

    [Theory, MemberData(nameof(Exercises))]
    public void Exercises_are_weighed(string rule, int remarks, int minutes, string exercises) =>
        Assert.Equal(remarks, Found(SamplePlans.Of(minutes, exercises.Split(' ')), rule).Count());

    /// <summary>Rule, number of remarks, exercise, first tonic, keys.</summary>
    public static TheoryData<string, int, string, string, LadderSpec> Ladders => new()
    {
        { "range-coverage", 0, "five-note-scale", "C4", new() { MostKeys = 5 } },
        { "range-coverage", 4, "repeated-tone", "E4", new() { MostKeys = 1 } },
        { "range-coverage", 2, "five-note-scale", "A4", new() { Limit = "soprano", ToleranceSemitones = 0, Shape = LadderShape.Up } },
        { "long-rest", 0, "five-note-scale", "C4", new() },
        { "long-rest", 0, "five-note-scale", "C4", new() { Limit = LadderSpec.AnyPart, ToleranceSemitones = 12 } },
        { "closed-vowel-high", 0, "five-note-scale", "C4", new() { Limit = "soprano", ToleranceSemitones = 0 } },
        { "closed-vowel-high", 1, "five-note-scale", "C4", new() { Limit = "soprano", ReachPercent = 100 } },
        { "closed-vowel-high", 0, "octave-arpeggio", "C4", new() { Limit = "soprano", ReachPercent = 100 } },
        { "settle-after-peak", 1, "five-note-scale", "C4", new() { Limit = "soprano", ReachPercent = 100 } },
        { "entries-and-exits", 0, "five-note-scale", "C4", new() { Limit = "soprano" } },
        { "entries-and-exits", 1, "five-note-scale", "G3", new() { Limit = LadderSpec.AnyPart, ToleranceSemitones = 0, MostKeys = 24 } },
    };

    [Theory, MemberData(nameof(Ladders))]
    public void Ladders_are_weighed(string rule, int remarks, string exercise, string start, LadderSpec keys) =>
        Assert.Equal(remarks, Found(SamplePlans.Of(15, exercise).WithKeys(0, keys with { Start = Pitch.Parse(start) }), rule).Count());

    [Fact]
    public void A_settling_exercise_after_the_peak_is_enough() =>
        Assert.Empty(Found(SamplePlans.Of(15, "five-note-scale", "sighing-hum").WithKeys(0, new() { Limit = "soprano", ReachPercent = 100 }), "settle-after-peak"));

    [Fact]
    public void A_long_rest_is_told_at_the_step_in_which_it_begins_and_ends_with_a_step_for_everyone()
    {
        LadderSpec sopranos = new() { Limit = "soprano", Start = Pitch.Parse("D5"), Shape = LadderShape.UpAndBack, ToleranceSemitones = 0, ReachPercent = 100 };
        string[] four = ["hum-thirds", "five-note-scale", "thirds-climb", "arpeggio"];
        Plan resting = SamplePlans.WithAllKeys(sopranos, SamplePlans.Of(15, four));
        resting = resting with { Steps = [.. resting.Steps.Select(step => step with { Tempo = Tempo.FromBeatsPerMinute(40) })] };
        PlanRemark remark = Found(resting, "long-rest").First(remark => remark.Sentence.Contains("the altos", StringComparison.Ordinal));
        Assert.Equal((PlanSeverity.Warning, 0, "keys"), (remark.Severity, remark.Step, remark.Field));
        Assert.StartsWith("From step 1 (Hum thirds) on the altos rest for ", remark.Sentence, StringComparison.Ordinal);

        Plan broken = resting with { Steps = [.. resting.Steps.SelectMany(step => new[] { step, new PlanStep { ExerciseId = "tall-spine" } })] };
        Assert.Empty(Found(broken, "long-rest"));
    }

    [Theory]
    [InlineData(0, 15, 0)]
    [InlineData(1, 0, 1)]
    [InlineData(1, 4, 1)]
    [InlineData(0, 5, 0)]
    public void Talk_is_not_left_out(int remarks, int seconds, int step)
    {
        Plan plan = SamplePlans.Of(15, Good.Split(' '));
        plan = plan with { Steps = [.. plan.Steps.Select((old, index) => old with { TalkSeconds = index == step ? seconds : 20 })] };
        Assert.Equal(remarks, Found(plan, "talk-left-out").Count());
    }

    [Fact]
    public void A_repetition_needs_no_talk()
    {
        Plan plan = SamplePlans.Of(15, "hum-thirds", "hum-thirds");
        Assert.Empty(Found(plan with { Steps = [plan.Steps[0], plan.Steps[1] with { TalkSeconds = 0 }] }, "talk-left-out"));
    }

    /// <summary>Remarks, the plan, and the plans before it, separated by bars.</summary>
    public static TheoryData<int, string, string> Histories => new()
    {
        { 0, Good, "" },
        { 1, Good, Good },
        { 1, Good, $"hum-fifth | {Good}" },
        { 0, Good, $"{Good} | hum-fifth" },
        { 0, Good, "counted-breath hum-thirds five-note-scale even-vowels octave-arpeggio" },
        { 0, $"{Good} arpeggio", $"{Good} | {Good}" },
        { 1, $"{Good} arpeggio", $"{Good} | {Good} | {Good}" },
        { 0, $"{Good} arpeggio thirds-climb", $"{Good} | {Good} | {Good}" },
        { 0, "hum-thirds five-note-scale", "hum-thirds five-note-scale" },
    };

    [Theory, MemberData(nameof(Histories))]
    public void A_plan_is_not_the_one_of_last_week(int remarks, string now, string before) =>
        Assert.Equal(remarks, Found(SamplePlans.Of(15, now.Split(' ')), "same-plan", Before(before)).Count());

    [Theory]
    [InlineData(0, "hum-thirds arpeggio", "hum-thirds | hum-thirds | hum-thirds | hum-thirds")]
    [InlineData(1, "hum-thirds arpeggio even-vowels", "hum-thirds | hum-thirds | hum-thirds | hum-thirds")]
    [InlineData(0, "hum-thirds arpeggio even-vowels", "hum-thirds | hum-thirds | hum-thirds")]
    public void One_new_exercise_is_enough(int remarks, string now, string before) =>
        Assert.Equal(remarks, Found(SamplePlans.Of(15, now.Split(' ')), "new-exercises", Before(before)).Count());

    /// <summary>Days before the concert, told, days since the bare rehearsals before, words of the warnings.</summary>
    public static TheoryData<int, bool, int[], string> Bare => new()
    {
        { 30, true, [], "" },
        { 30, true, [20], "" },
        { 30, true, [10], "only 10 days ago" },
        { 30, true, [14, 40], "rehearsal 3" },
        { 30, false, [], "not told" },
        { 100, true, [], "No concert is near" },
        { -1, true, [], "No concert is near" },
    };

    [Theory, MemberData(nameof(Bare))]
    public void A_bare_rehearsal_is_rare_near_a_concert_and_told(int daysToConcert, bool told, int[] daysSince, string words)
    {
        DateOnly date = new(2027, 4, 20);
        Choir choir = SampleChoir.Four with { Concerts = [new(date.AddDays(daysToConcert), "Spring concert")] };
        Plan[] earlier = [.. daysSince.Select(days => new Plan { Date = date.AddDays(-days), Bare = new(true, "cold voices"), Steps = [] }).Reverse()];
        Warmup bare = SamplePlans.Ready(choir, new() { Date = date, Bare = new(told, "as on the day"), Steps = [] });
        IReadOnlyList<PlanRemark> open = PlanCheck.Check(bare, earlier).Open;
        Assert.All(open, remark => Assert.Equal(("bare-rehearsal", PlanSeverity.Warning, "bare"), (remark.Rule, remark.Severity, remark.Field)));
        Assert.Equal(words.Length == 0 ? 0 : 1, open.Count);
        Assert.Contains(words, string.Concat(open.Select(remark => remark.Sentence)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_concert_behind_us_begins_a_new_count()
    {
        DateOnly date = new(2027, 4, 20);
        Choir choir = SampleChoir.Four with { Concerts = [new(date.AddDays(-5), "Spring concert"), new(date.AddDays(40), "Summer concert")] };
        Plan[] earlier = [.. new[] { 40, 20, 10 }.Select(days => new Plan { Date = date.AddDays(-days), Bare = new(true, ""), Steps = [] })];
        Assert.Empty(PlanCheck.Check(SamplePlans.Ready(choir, new() { Date = date, Bare = new(true, ""), Steps = [] }), earlier).Open);
    }

    [Fact]
    public void A_rule_that_is_off_is_kept_apart_and_counts_as_no_error()
    {
        Plan plan = SamplePlans.Of(60, "arpeggio", "hum-thirds") with { Off = [new("breath-first", "breath was done in the corridor")] };
        PlanRemarks remarks = PlanCheck.Check(SamplePlans.Ready(plan), []);
        Assert.Equal("breath-first", Assert.Single(remarks.Off).Rule);
        Assert.DoesNotContain(remarks.Open, remark => remark.Rule == "breath-first");
        Assert.Equal(remarks.Open.Count(remark => remark.Severity == PlanSeverity.Error), PlanCheck.Errors(SamplePlans.Ready(plan)));
    }

    [Fact]
    public void Names_of_rules_are_told_apart() => Assert.Equal(PlanCheck.RuleNames.Distinct(), PlanCheck.RuleNames);

    [Fact]
    public void Every_remark_says_what_is_wrong_and_what_to_do() => Assert.All(
        PlanCheck.Check(SamplePlans.Ready(SamplePlans.Of(60, "arpeggio", "hum-thirds", "two-octaves", "even-vowels"))),
        remark => Assert.True(remark.Sentence.Count(c => c is '.') >= 2 && remark.Sentence.EndsWith('.'), remark.Sentence));

    private static Plan[] Before(string plans) =>
        [.. plans.Split(" | ", StringSplitOptions.RemoveEmptyEntries).Select(plan => SamplePlans.Of(15, plan.Split(' ')))];

    private static IEnumerable<PlanRemark> Found(Plan plan, string rule, params Plan[] earlier) =>
        PlanCheck.Check(SamplePlans.Ready(plan), earlier).Open.Where(remark => remark.Rule == rule);
}
