using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Tests.Music.Exercises;

public class ExerciseFiguresTests
{
    [Fact]
    public void Seconds_and_notes_a_second_are_those_of_the_usual_tempo()
    {
        ExerciseFigures figures = ExerciseFigures.Of(At(120, "1:1/2 2:1/2 3:1/2 4:1/2 5:6 -:1 1"));

        Assert.Equal((4, 3.0, 4.0), (figures.NotesPerSecond, figures.LongestToneSeconds, figures.LongestPhraseSeconds));
    }

    [Fact]
    public void The_busiest_two_beats_count_wherever_they_begin() =>
        Assert.Equal(2.5, ExerciseFigures.Of(At(60, "1:4 2:3/2 3:1/4 4:1/4 5:1/2 4:1/2 3:1/2 2:4")).NotesPerSecond);

    [Fact]
    public void Triplets_are_three_notes_a_beat() => Assert.Equal(3.8, ExerciseFigures.Of(At(76, "1:1/3 2:1/3 3:1/3 2:1/3 3:1/3 4:1/3 5")).NotesPerSecond, 9);

    // Heights in the seven steps of the IPA chart: u 0, o 2/6, ɑ 1.
    [Fact]
    public void Courses_of_vowel_and_loudness_are_numbers()
    {
        Exercise exercise = At(60, "1 2 3 4") with { Dynamics = ["p", "f"], Pattern = SyllableText.Apply(PatternText.Parse("1 2 3 4").Value!, "noo/u ~ hm noh/o").Value };

        ExerciseFigures figures = ExerciseFigures.Of(exercise);

        Assert.Equal([0, 2 / 6.0], figures.VowelCourse);
        Assert.Equal([1, 4], figures.LoudnessCourse);
    }

    [Fact]
    public void In_counted_phases_breathing_out_is_the_tone_and_the_phrase()
    {
        Exercise exercise = At(60, "1") with
        {
            Pattern = null,
            Phases = [new(BreathAction.In, 4, ""), new(BreathAction.Out, 4, "soft"), new(BreathAction.Out, 3, "strong"), new(BreathAction.Rest, 2, ""), new(BreathAction.Out, 5, ""), new(BreathAction.In, 4, "")],
        };

        ExerciseFigures figures = ExerciseFigures.Of(exercise);

        Assert.Equal((0, 5.0, 7.0, 5), (figures.NotesPerSecond, figures.LongestToneSeconds, figures.LongestPhraseSeconds, figures.Complexity));
        Assert.Empty(figures.VowelCourse);
        Assert.Empty(figures.LoudnessCourse);
    }

    // Pitches + turns + leaps wider than a third + 2 for each altered degree + note lengths beyond the first, counted by hand.
    [Theory]
    [InlineData("1:7", 1)]
    [InlineData("1 2 3 2 1:3", 3 + 1 + 1)]
    [InlineData("1:1/2 2:1/2 3:1/2 4:1/2 5:1/2 4:1/2 3:1/2 2:1/2 1:3", 5 + 1 + 1)]
    [InlineData("1 5 1 8 1", 3 + 3 + 4)]
    [InlineData("1 #1 2 #2 3 b3 2 b2 1", 5 + 1 + (2 * 4))]
    [InlineData("1 1 3 3 1 1", 2 + 1)]
    public void Complexity_follows_its_formula(string pattern, int complexity) =>
        Assert.Equal(complexity, ExerciseFigures.Of(At(88, pattern)).Complexity);

    private static Exercise At(int beatsPerMinute, string pattern)
    {
        Tempo tempo = Tempo.FromBeatsPerMinute(beatsPerMinute);
        return Samples.Exercise(pattern) with { Tempo = new(tempo, tempo, tempo) };
    }
}
