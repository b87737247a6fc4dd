using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Tests.Sessions.Marks;

namespace WarmupConsole.Tests.Sessions.Planning;

/// <summary>The rules that look at every line and every note: for each a table of exercises that pass and exercises that do not.</summary>
public sealed class LineRuleTests
{
    private static readonly Beats None = Beats.Zero;

    /// <summary>Remarks, syllables of the pattern, parts with another line and its syllables.</summary>
    public static TheoryData<int, string, string, string> First => new()
    {
        { 0, "noo/u ~ ~ ~ ~", "", "" },
        { 1, "nah/ɑ ~ ~ ~ ~", "", "" },
        { 1, "neh/ɛ ~ ~ ~ ~", "", "" },
        { 0, "noo/u ~ nah/ɑ ~ ~", "", "" },
        { 1, "mm/m ~ nah/ɑ ~ ~", "", "" }, // the hum is no vowel, so the first one is open
        { 0, "mm/m ~ noo/u nah/ɑ ~", "", "" },
        { 1, "x ~ nah/ɑ ~ ~", "", "" }, // an unknown one is passed over
        { 0, "mm/m ~ ~ ~ ~", "", "" }, // nothing but a hum
        { 1, "noo/u ~ ~ ~ ~", "men", "nah/ɑ" }, // the men open at once
        { 0, "noo/u ~ ~ ~ ~", "men", "nee/i" },
        { 0, "noo/u ~ ~ ~ ~", "mezzo", "nah/ɑ" }, // nobody sings that line here
    };

    [Theory, MemberData(nameof(First))]
    public void The_first_vowel_of_every_line_counts(int remarks, string syllables, string parts, string theirs) =>
        Assert.Equal(remarks, Found(Exercise("1 2 3 2 1:2", syllables, parts, theirs), new(), "closed-vowel-first").Length);

    [Fact]
    public void What_comes_after_the_first_vowel_is_free()
    {
        Exercise closed = Exercise("1 2 3 2 1:2", "noo/u", "", "") with { Id = "first" };
        Exercise open = Exercise("1 2 3 2 1:2", "nah/ɑ", "", "");
        Assert.DoesNotContain(Check([closed, open], new()), remark => remark.Rule == "closed-vowel-first");
        Assert.Contains(Check([open, closed], new()), remark => remark is { Rule: "closed-vowel-first", Step: 0, Severity: PlanSeverity.Error });
    }

    /// <summary>Remarks, pattern, syllables, parts with another line of one note, its syllables; sung up to the sopranos' extreme.</summary>
    public static TheoryData<int, string, string, string, string> High => new()
    {
        { 1, "1 3 5 3 1:2", "nee/i", "", "" },
        { 0, "1 3 5 3 1:2", "nah/ɑ", "", "" },
        { 0, "1 3 5 3 1:2", "nee/i nah/ɑ ~ ~ nee/i", "", "" }, // open just where it is high
        { 1, "5 3 1 3 5:2", "nah/ɑ ~ ~ ~ nee/i", "", "" }, // the top comes twice, and closed the second time
        { 0, "5 3 1 3 5:2", "nah/ɑ ~ noo/u nah/ɑ ~", "", "" }, // closed where it is low
        { 0, "1 3 5 3 1:2", "mm/m", "", "" },
        { 1, "1 1 1 1 1:2", "nah/ɑ", "soprano", "noo/u" }, // the sopranos' own line
        { 0, "1 3 5 3 1:2", "noo/u", "soprano, alto, men", "nah/ɑ" },
    };

    [Theory, MemberData(nameof(High))]
    public void A_closed_vowel_is_seen_wherever_it_is_high(int remarks, string pattern, string syllables, string parts, string theirs) =>
        Assert.Equal(remarks, Found(Exercise(pattern, syllables, parts, theirs), new() { Limit = "soprano", ReachPercent = 100, Shape = LadderShape.Up, ToleranceSemitones = 0 }, "closed-vowel-high").Length);

    [Theory]
    [InlineData("", 0)]
    [InlineData("men", 0)]
    [InlineData("tenor", 0)]
    [InlineData("mezzo", 1)]
    [InlineData("children, mezzo", 1)]
    [InlineData("mezzo, alto", 0)]
    public void A_line_that_nobody_sings_is_told(string parts, int remarks)
    {
        PlanRemark[] found = Found(Exercise("1 2 3 2 1:2", "noo/u", parts, "noo/u"), new(), "voice-without-part");
        Assert.Equal(remarks, found.Length);
        Assert.All(found, remark => Assert.Equal(PlanSeverity.Warning, remark.Severity));
        Assert.All(found, remark => Assert.Contains($"a line for {parts}, and nobody in this choir is called so", remark.Sentence, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("simple-before-complex", "1 2 1:2 | 1 2 3 2 1:2 | 1 3 5 3 1:2 | 1 3 2 4 3 5 4 2 1:2", 0)]
    [InlineData("simple-before-complex", "1 3 2 4 3 5 4 2 1:2 | 1 3 5 3 1:2 | 1 2 3 2 1:2 | 1 2 1:2", 1)]
    [InlineData("simple-before-complex", "1 3 2 4 3 5 4 2 1:2 | 1 2 1:2 | 1 2 3 2 1:2", 0)] // too few to speak of a direction
    [InlineData("small-before-wide", "1 2 1:2 | 1 2 3 1:2 | 1 3 5 1:2 | 1 5 8 1:2", 0)]
    [InlineData("small-before-wide", "1 5 8 1:2 | 1 3 5 1:2 | 1 2 3 1:2 | 1 2 1:2", 1)]
    [InlineData("short-before-long", "1:2 | 1 2:2 | 1 2 1:2 | 1 2 1 2:2", 0)]
    [InlineData("short-before-long", "1 2 1 2:2 | 1 2 1:2 | 1 2:2 | 1:2", 1)]
    [InlineData("slow-before-quick", "1:4 2:4 | 1:2 2:2 | 1 2 | 1:1/2 2:1/2", 0)]
    [InlineData("slow-before-quick", "1:1/2 2:1/2 | 1 2 | 1:2 2:2 | 1:4 2:4", 1)]
    [InlineData("slow-before-quick", "1:1/2 2:1/2 | 1:4 2:4 | 1:2 2:2 | 1 2", 0)] // single steps may fall back
    public void Lines_grow_up_to_the_peak(string rule, string patterns, int remarks)
    {
        Exercise[] exercises = [.. patterns.Split(" | ").Select((pattern, index) => Exercise(pattern, "noo/u", "", "") with { Id = $"line-{index}" })];

        // One key each, higher every time, so that the last step is the peak.
        Assert.Equal(remarks, Check(exercises, new() { MostKeys = 1, Shape = LadderShape.Up, Limit = "soprano", ReachPercent = 100 }, true).Count(remark => remark.Rule == rule));
    }

    private static PlanRemark[] Found(Exercise exercise, LadderSpec keys, string rule) => [.. Check([exercise], keys).Where(remark => remark.Rule == rule)];

    private static IReadOnlyList<PlanRemark> Check(Exercise[] exercises, LadderSpec keys, bool rising = false)
    {
        string[] starts = ["C4", "F4", "A4", "C5"];
        Plan plan = new() { Steps = [.. exercises.Select((exercise, index) => new PlanStep { ExerciseId = exercise.Id, Keys = rising ? keys with { Start = WarmupConsole.Music.Pitches.Pitch.Parse(starts[index]) } : keys })] };
        return PlanCheck.Check(WarmupBuilder.Build(SampleChoir.Four, plan, exercises.ToDictionary(exercise => exercise.Id)));
    }

    private static Exercise Exercise(string pattern, string syllables, string parts, string theirs)
    {
        Tempo tempo = Tempo.FromBeatsPerMinute(80);
        Pattern line = Line(pattern, syllables);
        return new()
        {
            Id = "line",
            Title = "Line",
            Stage = Stage.Sung,
            Tempo = new(tempo, tempo, tempo),
            Pattern = line,
            Voices = parts.Length == 0 ? [] : [new(parts.Split(", "), Line("5", theirs), None)],
        };
    }

    private static Pattern Line(string pattern, string syllables) => SyllableText.Apply(PatternText.Parse(pattern).Value!, syllables).Value!;
}
