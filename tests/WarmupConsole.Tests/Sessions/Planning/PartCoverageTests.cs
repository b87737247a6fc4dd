using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Tests.Sessions.Planning;

public sealed class PartCoverageTests
{
    [Fact]
    public void A_part_reaches_from_its_lowest_to_its_highest_note_of_all_keys()
    {
        Plan plan = SamplePlans.Of(15, "five-note-scale", "repeated-tone").WithKeys(0, new() { Start = Pitch.Parse("D4"), MostKeys = 2 }).WithKeys(1, new() { Start = Pitch.Parse("F4"), MostKeys = 1 });
        Assert.Equal(["D4–B♭4", "D4–B♭4", "D3–B♭3", "D3–B♭3"], Of(plan).Select(part => $"{part.Reached}"));
        Assert.Equal([4, 4, 4, 4], Of(plan).Select(part => part.Rungs));
        Assert.Equal([9, 9, 9, 9], Of(plan).Select(part => part.ComfortableSemitones));
    }

    [Fact]
    public void Only_what_is_sung_counts_and_only_inside_the_comfortable_range()
    {
        PartCoverage[] parts = [.. Of(SamplePlans.Of(15, "five-note-scale").WithKeys(0, new() { Start = Pitch.Parse("Bb4"), Limit = "soprano", MostKeys = 1, ReachPercent = 100, ToleranceSemitones = 0 }))];
        Assert.Equal(("B♭4–F5", 8, 1), ($"{parts[0].Reached}", parts[0].ComfortableSemitones, parts[0].Rungs));
        Assert.Equal((null, 0, 0), (parts[1].Reached, parts[1].ComfortableSemitones, parts[1].Rungs));
    }

    private static IReadOnlyList<PartCoverage> Of(Plan plan) => PartCoverage.Of(SamplePlans.Ready(plan));
}
