using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Tests.Sessions.Marks;

namespace WarmupConsole.Tests.Sessions.Planning;

public sealed class PlanCheckTests
{
    /// <summary>Rule, step it names (-1 for none found), exercises in order.</summary>
    public static TheoryData<string, int, string> Orders => new()
    {
        { "breath-first", -1, "shoulder-rolls counted-breath hum-thirds five-note-scale" },
        { "breath-first", -1, "counted-breath hum-thirds" },
        { "breath-first", -1, "shoulder-rolls tall-spine" },
        { "breath-first", 1, "shoulder-rolls hum-thirds counted-breath five-note-scale" },
        { "breath-first", 0, "hum-thirds five-note-scale" },
        { "half-closed-first", -1, "counted-breath hum-thirds five-note-scale" },
        { "half-closed-first", -1, "counted-breath trill-fifth five-note-scale" },
        { "half-closed-first", -1, "counted-breath" },
        { "half-closed-first", 1, "counted-breath five-note-scale hum-thirds" },
        { "half-closed-first", 2, "counted-breath slide-fifth five-note-scale" },
        { "closed-vowel-first", -1, "counted-breath hum-thirds five-note-scale arpeggio" },
        { "closed-vowel-first", -1, "counted-breath hum-thirds thirds-climb arpeggio" },
        { "closed-vowel-first", -1, "counted-breath slide-fifth hum-thirds arpeggio" },
        { "closed-vowel-first", 2, "counted-breath hum-thirds arpeggio five-note-scale" },
        { "stage-order", -1, "counted-breath hum-thirds shoulder-rolls five-note-scale" },
        { "stage-order", 3, "counted-breath hum-thirds five-note-scale trill-fifth" },
        { "stage-order", 2, "counted-breath sighing-hum five-note-scale" },
    };

    [Theory, MemberData(nameof(Orders))]
    public void Order_is_checked(string rule, int step, string exercises)
    {
        IEnumerable<int?> found = Found(SamplePlans.Of(15, exercises.Split(' ')), rule).Select(remark => remark.Step);
        Assert.Equal(step < 0 ? [] : [step], found);
    }

    [Theory]
    [InlineData(0, 4, false)]
    [InlineData(100, 4, true)]
    [InlineData(100, 6, false)]
    public void Extremes_belong_to_the_last_third(int reach, int step, bool isWrong)
    {
        Plan plan = SamplePlans.Calm.WithKeys(step, new() { Start = Pitch.Parse("A4"), Shape = LadderShape.Up, Limit = LadderSpec.AnyPart, ReachPercent = reach, ToleranceSemitones = 0 });
        Assert.Equal(isWrong, Found(plan, "extremes-late").Any());
    }

    [Fact]
    public void A_note_beyond_the_extreme_range_is_an_error_with_part_key_and_note()
    {
        Warmup calm = SamplePlans.Ready(SamplePlans.Calm);
        Choir lower = SampleChoir.Four with { Parts = [.. SampleChoir.Four.Parts.Select(part => part with { Range = SampleChoir.Four.Parts[3].Range })] };
        KeyLadder squeezed = new(
            [.. calm.Steps[4].Ladder.Rungs.Select(rung => rung with { Parts = [.. rung.Parts.Zip(lower.Parts, (sung, part) => sung with { Part = part, Sings = true })] })], []);
        Warmup wrong = calm with { Steps = [.. calm.Steps.Select((step, index) => index == 4 ? step with { Ladder = squeezed } : step)] };
        PlanRemark remark = Assert.Single(PlanCheck.Check(wrong), remark => remark.Rule == "beyond-extreme");
        Assert.Equal((PlanSeverity.Error, 4), (remark.Severity, remark.Step));
        Assert.Equal("Step 5 (Five note scale) asks A4 of the Soprano in D, beyond the extreme range E2–E4. Nobody in the part sings that: end the ladder earlier or let the part rest.", remark.Sentence);
    }

    [Fact]
    public void A_ladder_without_keys_is_a_warning_that_repeats_the_reason()
    {
        Plan plan = SamplePlans.Calm with { Steps = [.. SamplePlans.Calm.Steps, new() { ExerciseId = "two-octaves" }] };
        PlanRemark remark = Assert.Single(Found(plan, "no-keys"));
        Assert.Equal((PlanSeverity.Warning, 8), (remark.Severity, remark.Step));
        Assert.Contains(SamplePlans.Ready(plan).Steps[8].Ladder.Reasons[0], remark.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1.0, "")]
    [InlineData(1.09, "")]
    [InlineData(1.12, "The steps take 16:48, more than the 15 minutes of the plan.")]
    [InlineData(0.76, "")]
    [InlineData(0.74, "The steps take only 11:06 of the 15 minutes of the plan.")]
    public void The_steps_fill_the_minutes(double share, string sentence)
    {
        Warmup calm = SamplePlans.Ready(SamplePlans.Calm);
        TimeSpan rest = (TimeSpan.FromMinutes(15) * share) - (calm.Planned - calm.Steps[0].Planned);
        Warmup stretched = calm with { Steps = [calm.Steps[0] with { Planned = rest }, .. calm.Steps.Skip(1)] };
        PlanRemark? remark = PlanCheck.Check(stretched).SingleOrDefault(remark => remark.Rule == "planned-length");
        Assert.Equal(sentence.Length > 0, remark is { Severity: PlanSeverity.Warning, Step: null });
        Assert.StartsWith(sentence, remark?.Sentence ?? "", StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(120, 15, "")]
    [InlineData(120, 10, "")]
    [InlineData(120, 9, "little")]
    [InlineData(120, 21, "much")]
    [InlineData(60, 10, "")]
    [InlineData(60, 16, "much")]
    [InlineData(240, 24, "little")]
    [InlineData(240, 30, "")]
    public void The_minutes_are_about_an_eighth_of_the_rehearsal_and_ten_at_least(int rehearsal, int minutes, string word)
    {
        Warmup warmup = SamplePlans.Ready(SampleChoir.Four with { RehearsalMinutes = rehearsal }, SamplePlans.Calm with { Minutes = minutes });
        PlanRemark? remark = PlanCheck.Check(warmup).SingleOrDefault(remark => remark.Rule == "rehearsal-share");
        Assert.Equal(word.Length > 0, remark is { Severity: PlanSeverity.Hint });
        Assert.Contains(word, remark?.Sentence ?? "", StringComparison.Ordinal);
    }

    [Fact]
    public void A_calm_plan_has_no_errors_and_an_open_session_no_remarks()
    {
        Assert.DoesNotContain(PlanCheck.Check(SamplePlans.Ready(SamplePlans.Calm)), remark => remark.Severity == PlanSeverity.Error);
        Assert.Empty(PlanCheck.Check(SamplePlans.Ready(SamplePlans.Of(60))));
    }

    [Fact]
    public void Errors_come_first_in_the_order_of_the_rules()
    {
        IReadOnlyList<PlanRemark> remarks = PlanCheck.Check(SamplePlans.Ready(SamplePlans.Of(60, "arpeggio", "hum-thirds", "two-octaves")));
        Assert.Equal(remarks.OrderByDescending(remark => remark.Severity), remarks);
        Assert.Equal(["breath-first", "half-closed-first", "closed-vowel-first"], remarks.Where(remark => remark.Severity == PlanSeverity.Error).Select(remark => remark.Rule));
    }

    private static IEnumerable<PlanRemark> Found(Plan plan, string rule) =>
        PlanCheck.Check(SamplePlans.Ready(plan)).Where(remark => remark.Rule == rule);
}
