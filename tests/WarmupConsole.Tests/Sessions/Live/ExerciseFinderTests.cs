using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tests.Sessions.Live;

public class ExerciseFinderTests
{
    private static readonly Exercise[] All =
    [
        Named("Hum on a fifth", Stage.Humming, Purpose.LeapFifth),
        Named("Slow siren", Stage.Slide, Purpose.Legato),
        Named("Siren up and down", Stage.Slide, Purpose.Slow),
        Named("Bells", Stage.Sung, Purpose.Staccato, Purpose.LeapOctave),
    ];

    [Theory]
    [InlineData("sir", "Siren up and down|Slow siren")]
    [InlineData("SIREN slow", "Siren up and down|Slow siren")]
    [InlineData("fif", "Hum on a fifth")]
    [InlineData("octave", "Bells")]
    [InlineData("touch", "Slow siren|Bells")]
    [InlineData("hum", "Hum on a fifth")]
    [InlineData("zz", "")]
    [InlineData("", "")]
    [InlineData(" - ", "")]
    public void Letters_find_names_first_and_purposes_after(string typed, string titles) =>
        Assert.Equal(titles, string.Join('|', ExerciseFinder.Find(typed, All, 5).Select(exercise => exercise.Title)));

    [Fact]
    public void No_more_are_found_than_wanted() => Assert.Single(ExerciseFinder.Find("s", All, 1));

    private static Exercise Named(string title, Stage stage, params Purpose[] purposes) =>
        LiveFixtures.Scale with { Id = title.ToLowerInvariant().Replace(' ', '-'), Title = title, Stage = stage, Purposes = purposes };
}
