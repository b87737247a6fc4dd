using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Tests.Architecture;

namespace WarmupConsole.Tests.Music.Exercises;

/// <summary>For each purpose an exercise that serves it, and one that just does not.</summary>
public class PurposeRulesTests
{
    [Theory]
    [InlineData(Purpose.ClosedToOpenVowels, "1 3 5", "noo/u noh/o nah/ɑ", "nah/ɑ noh/o noo/u")]
    [InlineData(Purpose.ClosedToOpenVowels, "5 4 3 2", "nah/ɑ noo/u noh/o naw/ɔ", "nah/ɑ noo/u noh/o ~")]
    [InlineData(Purpose.EvenVowels, "1 1 1 1", "mee/i mah/ɑ mee/i mah/ɑ", "mee/i mah/ɑ mee/i ~")]
    [InlineData(Purpose.EvenVowels, "1 3 2 4", "mee/i mah/ɑ mee/i mah/ɑ", "mah/ɑ ~ ~ mee/i")]
    public void Vowels_decide(Purpose purpose, string pattern, string serving, string other)
    {
        Assert.True(PurposeRules.Serves(Sing(pattern, serving), purpose));
        Assert.False(PurposeRules.Serves(Sing(pattern, other), purpose));
    }

    [Theory]
    [InlineData(Purpose.EvenVowels, "1 3 5 7", "1 5 1 5")]
    public void Vowels_are_even_only_where_the_line_does_not_leap(Purpose purpose, string serving, string other)
    {
        Assert.True(PurposeRules.Serves(Sing(serving, "mee/i mah/ɑ mee/i mah/ɑ"), purpose));
        Assert.False(PurposeRules.Serves(Sing(other, "mee/i mah/ɑ mee/i mah/ɑ"), purpose));
    }

    [Theory]
    [InlineData(Purpose.RepeatedPitch, "1 1 2", "1 2 1")]
    [InlineData(Purpose.RepeatedPitch, "1 2 1 3 1", "1 2 3 2 1")]
    [InlineData(Purpose.ScaleMotion, "1 2 3", "1 2 1")]
    [InlineData(Purpose.ScaleMotion, "5 5 4 4 3", "1 3 5 8 2 3 4")]
    [InlineData(Purpose.LeapThird, "1 3", "1 2 1 4")]
    [InlineData(Purpose.LeapThird, "2 4", "1 4")]
    [InlineData(Purpose.LeapFifth, "5 1", "1 3 5")]
    [InlineData(Purpose.LeapOctave, "1 8", "1 3 5 8 5 3 1")]
    [InlineData(Purpose.HalfSteps, "1 7, 1", "1 2 3")]
    [InlineData(Purpose.HalfSteps, "5 2 7, 1", "3 4 5 1")]
    [InlineData(Purpose.ShortToLong, "1:1/2 2:1/2 3 4 5", "1 2 3 4 5:8")]
    [InlineData(Purpose.Legato, "1 2 3 -", "1 2 - 3")]
    [InlineData(Purpose.Staccato, "1:1/2 -:1/2 2:1/2 -:1/2 3:1/2 -:1/2 1", "1 -:1/2 2 -:1/2 3 -:1/2 1")]
    [InlineData(Purpose.Simple, "1 2 3 4 5 4 3 2 1", "1 5 2 6 3")]
    [InlineData(Purpose.Complex, "1 5 2 6 3", "1 2 3 4 5 4 3 2 1")]
    public void The_line_decides(Purpose purpose, string serving, string other)
    {
        Assert.True(PurposeRules.Serves(Samples.Exercise(serving), purpose));
        Assert.False(PurposeRules.Serves(Samples.Exercise(other), purpose));
    }

    [Theory]
    [InlineData(Purpose.Sustained, "1:3", 60, 61)]
    [InlineData(Purpose.Slow, "1 2 3 4", 90, 91)]
    [InlineData(Purpose.Quick, "1:1/2 2:1/2 3:1/2 4:1/2", 90, 89)]
    [InlineData(Purpose.Blend, "1 2 3 4", 120, 121)]
    public void The_usual_tempo_decides(Purpose purpose, string pattern, int serving, int other)
    {
        Assert.True(PurposeRules.Serves(At(serving, Samples.Exercise(pattern)), purpose));
        Assert.False(PurposeRules.Serves(At(other, Samples.Exercise(pattern)), purpose));
    }

    [Theory]
    [InlineData(Purpose.SoftToLoud, "p mp mf", "p mp")]
    [InlineData(Purpose.SoftToLoud, "p p f", "p f mf")]
    [InlineData(Purpose.Swell, "p mf p", "p mf mp")]
    [InlineData(Purpose.Swell, "pp f mp", "mp mf p")]
    [InlineData(Purpose.Blend, "mf", "p f p")]
    public void The_course_of_loudness_decides(Purpose purpose, string serving, string other)
    {
        Assert.True(PurposeRules.Serves(Samples.Exercise("1 2") with { Dynamics = serving.Split(' ') }, purpose));
        Assert.False(PurposeRules.Serves(Samples.Exercise("1 2") with { Dynamics = other.Split(' ') }, purpose));
    }

    [Theory]
    [InlineData(Articulation.Staccato, true, false)]
    [InlineData(Articulation.Legato, false, true)]
    [InlineData(Articulation.Glide, false, true)]
    [InlineData(Articulation.Marcato, false, false)]
    public void The_touch_decides(Articulation articulation, bool staccato, bool legato)
    {
        Exercise exercise = Samples.Exercise("1 2 3") with { Articulation = articulation };

        Assert.Equal((staccato, legato), (PurposeRules.Serves(exercise, Purpose.Staccato), PurposeRules.Serves(exercise, Purpose.Legato)));
    }

    [Theory]
    [InlineData(Purpose.Sustained, 60, "in 4|out 6", "in 4|out 5|rest 1|out 5")]
    [InlineData(Purpose.ShortToLong, 60, "out 4|in 2|out 6", "out 4|in 2|out 4")]
    [InlineData(Purpose.Slow, 66, "in 4", null)]
    [InlineData(Purpose.Quick, 76, "in 4", null)]
    [InlineData(Purpose.Simple, 60, "in 4|out 4", "in 1|in 2|in 3|in 4|in 5|in 6|in 7|in 8|in 9")]
    [InlineData(Purpose.Staccato, 60, null, "out 4")]
    [InlineData(Purpose.Swell, 60, null, "out 4")]
    public void Counted_phases_can_serve_only_what_counting_shows(Purpose purpose, int countsPerMinute, string? serving, string? other)
    {
        Assert.All(serving is null ? [] : new[] { serving }, phases => Assert.True(PurposeRules.Serves(At(countsPerMinute, Breathe(phases)), purpose)));
        Assert.All(other is null ? [] : new[] { other }, phases => Assert.False(PurposeRules.Serves(At(countsPerMinute, Breathe(phases)), purpose)));
    }

    [Fact]
    public void All_that_an_exercise_serves_is_found() =>
        Assert.Equal(
            [Purpose.RepeatedPitch, Purpose.Slow, Purpose.Legato, Purpose.Simple, Purpose.Drone, Purpose.Blend],
            PurposeRules.Served(Samples.Exercise("1 1 1") with { Harmony = [new("I", Beats.FromBeats(3))] }));

    [Fact]
    public void Every_purpose_has_its_row_and_says_what_it_asks() =>
        Assert.Equal(Enum.GetValues<Purpose>().Length, Enum.GetValues<Purpose>().Select(PurposeRules.Asks).Where(asks => asks.Length > 0).Distinct().Count());

    [Fact]
    public void The_documented_table_says_the_same()
    {
        string page = Repository.Text("docs/plan-format.md");

        Assert.All(Enum.GetValues<Purpose>(), purpose => Assert.Contains($"| `{PurposeData.Id(purpose)}` | {PurposeRules.Asks(purpose)} |", page, StringComparison.Ordinal));
    }

    private static Exercise Sing(string pattern, string syllables) =>
        Samples.Exercise(pattern) with { Pattern = SyllableText.Apply(PatternText.Parse(pattern, Mode.Major).Value!, syllables).Value };

    private static Exercise At(int beatsPerMinute, Exercise exercise)
    {
        Tempo tempo = Tempo.FromBeatsPerMinute(beatsPerMinute);
        return exercise with { Tempo = new(tempo, tempo, tempo) };
    }

    private static Exercise Breathe(string phases) => Samples.Exercise("1") with
    {
        Pattern = null,
        Phases = [.. phases.Split('|').Select(phase => phase.Split(' ')).Select(phase => new BreathPhase(Enum.Parse<BreathAction>(phase[0], ignoreCase: true), int.Parse(phase[1], System.Globalization.CultureInfo.InvariantCulture), ""))],
    };
}
