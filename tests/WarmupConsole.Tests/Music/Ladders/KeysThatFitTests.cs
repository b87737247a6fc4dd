using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Tests.Music.Ladders;

/// <summary>Which keys fit which voice: computed apart from this program from published ranges; a tonic t fits when low ≤ t+min and t+max ≤ high.</summary>
public class KeysThatFitTests
{
    private const string FiveUpAndDown = "1 2 3 4 5 4 3 2 1";
    private const string Arpeggio = "1 3 5 8 5 3 1";
    private const string BelowTonic = "1 3 5 4 2 7, 1";
    private const string ToTheNinth = "1 2 3 4 5 6 7 8 9 8 7 6 5 4 3 2 1";
    private const string ToTheTwelfth = "1 3 5 8 10 12 10 8 5 3 1";

    // Amateur ranges: S 60-79, A 55-74, T 48-69, B 41-60.
    [Theory]
    [InlineData("1 2 3 2 1", 16, 16, 18, 16)]
    [InlineData(FiveUpAndDown, 13, 13, 15, 13)]
    [InlineData(Arpeggio, 8, 8, 10, 8)]
    [InlineData(BelowTonic, 12, 12, 14, 12)]
    [InlineData(ToTheNinth, 6, 6, 8, 6)]
    [InlineData(ToTheTwelfth, 1, 1, 3, 1)]
    public void Each_amateur_voice_has_its_number_of_keys(string pattern, int soprano, int alto, int tenor, int bass) =>
        Assert.Equal([soprano, alto, tenor, bass], Counts(pattern, Samples.Amateur));

    // Conservative ranges: S 60-77, A 55-72, T 48-65, B 43-60.
    [Theory]
    [InlineData("1 2 3 2 1", 14, 14, 14, 14)]
    [InlineData(FiveUpAndDown, 11, 11, 11, 11)]
    [InlineData(Arpeggio, 6, 6, 6, 6)]
    [InlineData(BelowTonic, 10, 10, 10, 10)]
    public void Each_conservative_voice_has_its_number_of_keys(string pattern, int soprano, int alto, int tenor, int bass) =>
        Assert.Equal([soprano, alto, tenor, bass], Counts(pattern, Samples.Conservative));

    [Fact]
    public void The_tonics_of_five_notes_are_those_of_each_voice()
    {
        IReadOnlyList<Part> choir = Samples.Choir(Samples.Amateur);

        Assert.Equal([(60, 72), (55, 67), (48, 62), (41, 53)], choir.Select(part => Ends(Rungs(FiveUpAndDown, [part]), part)));
    }

    // Men an octave below women (common practice): tonics as the women sing them; 0 where no key fits all four.
    [Theory]
    [InlineData("1 2 3 2 1", 60, 68, 9)]
    [InlineData(FiveUpAndDown, 60, 65, 6)]
    [InlineData(Arpeggio, 60, 60, 1)]
    [InlineData(BelowTonic, 61, 65, 5)]
    [InlineData(ToTheNinth, 0, 0, 0)]
    [InlineData(ToTheTwelfth, 0, 0, 0)]
    public void All_four_together_share_these_keys(string pattern, int lowest, int highest, int count)
    {
        IReadOnlyList<Rung> rungs = Rungs(pattern, Samples.Choir(Samples.Amateur));

        Assert.Equal(count, rungs.Count);
        Assert.Equal((lowest, highest), count == 0 ? (0, 0) : (rungs[0].Tonic.Midi, rungs[^1].Tonic.Midi));
    }

    [Theory]
    [InlineData("1 2 3 2 1")]
    [InlineData(FiveUpAndDown)]
    [InlineData(Arpeggio)]
    [InlineData(BelowTonic)]
    public void Both_tables_share_the_same_common_keys(string pattern) => Assert.Equal(
        Rungs(pattern, Samples.Choir(Samples.Amateur)).Select(rung => rung.Tonic),
        Rungs(pattern, Samples.Choir(Samples.Conservative)).Select(rung => rung.Tonic));

    [Fact]
    public void With_the_widest_band_no_key_is_lost() => Assert.All(
        Rungs(FiveUpAndDown, Samples.Choir(Samples.Amateur)),
        rung => Assert.All(rung.Parts.Zip(Samples.Professional), pair => Assert.True(Samples.Range(pair.Second).Contains(pair.First.Span))));

    private static int[] Counts(string pattern, string[] ranges) => [.. Samples.Choir(ranges).Select(part => Rungs(pattern, [part]).Count)];

    private static (int Low, int High) Ends(IReadOnlyList<Rung> rungs, Part part) =>
        (rungs[0].Tonic.Octaves(part.PlacementOctaves).Midi, rungs[^1].Tonic.Octaves(part.PlacementOctaves).Midi);

    private static IReadOnlyList<Rung> Rungs(string pattern, IReadOnlyList<Part> parts) =>
        LadderBuilder.Build(Samples.Exercise(pattern), parts, new() { Start = Pitch.Parse("C1"), Shape = LadderShape.Up }).Rungs;
}
