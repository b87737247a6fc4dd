using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Tests.Music.Exercises;

public class ExerciseDemandsTests
{
    // Traditional, unowned patterns, with their semitones from the tonic.
    [Theory]
    [InlineData("5 4 3 2 1", 0, 7, 2)]
    [InlineData("1 3 5 3 1", 0, 7, 4)]
    [InlineData("1 3 5 8 5 3 1", 0, 12, 5)]
    [InlineData("1 3 5 4 2 7, 1", -1, 7, 4)]
    [InlineData("8 5 3 1", 0, 12, 5)]
    [InlineData("1 8 -:1 1", 0, 12, 12)]
    [InlineData("5 5 5", 7, 7, 0)]
    public void Span_and_leap_are_those_of_the_traditional_patterns(string pattern, int low, int high, int leap)
    {
        ExerciseDemands demands = Demands(pattern);

        Assert.Equal((low, high, leap), (demands.Low.Semitones, demands.High.Semitones, demands.LargestLeapSemitones));
        Assert.Equal(high - low, demands.SpanSemitones);
    }

    [Theory]
    [InlineData("1 5 3 8 1", 8, 12)]
    [InlineData("1 2 3", 2, 0)]
    [InlineData("5 -:2 1", 0, 7)]
    [InlineData("1", 0, 0)]
    public void Leaps_are_counted_each_way(string pattern, int up, int down) =>
        Assert.Equal((up, down), (Demands(pattern).LargestLeapUpSemitones, Demands(pattern).LargestLeapDownSemitones));

    [Theory]
    [InlineData("1 3 5 8 5 3 1", "8", 1)]
    [InlineData("5 #4:3 5 4:2", "5", 3)]
    public void The_highest_degree_and_the_longest_tone_are_named(string pattern, string degree, int beats) =>
        Assert.Equal((degree, Beats.FromBeats(beats)), (DegreeText.Write(Demands(pattern).TopDegree), Demands(pattern).LongestTone));

    [Fact]
    public void In_minor_the_third_is_minor() =>
        Assert.Equal(new Interval(2, 3), ExerciseDemands.Of(PatternText.Parse("1 2 3").Value!, Mode.Minor).High);

    [Fact]
    public void The_longest_phrase_is_what_one_breath_must_carry() =>
        Assert.Equal(Beats.FromFraction(7, 2), Demands("1:2 - 1:3 2:1/2 -:8 1").LongestPhrase);

    [Fact]
    public void The_vowel_on_the_highest_note_may_be_carried_from_before()
    {
        Pattern pattern = SyllableText.Apply(PatternText.Parse("1 3 5 3 1").Value!, "noo/u nah/a ~ nee/i ~").Value!;

        ExerciseDemands demands = ExerciseDemands.Of(pattern, Mode.Major);

        Assert.Equal(("u", "a"), (demands.FirstVowel, demands.TopVowel));
    }

    [Fact]
    public void Without_syllables_the_vowels_are_unknown() => Assert.Equal(("", ""), (Demands("1 2").FirstVowel, Demands("1 2").TopVowel));

    [Fact]
    public void A_pattern_of_rests_has_no_demands() =>
        Assert.Throws<ArgumentException>(() => ExerciseDemands.Of(new([new(null, Beats.FromBeats(1), null)]), Mode.Major));

    private static ExerciseDemands Demands(string pattern) => ExerciseDemands.Of(PatternText.Parse(pattern).Value!, Mode.Major);
}
