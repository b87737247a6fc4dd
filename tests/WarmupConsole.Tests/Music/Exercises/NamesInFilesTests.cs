using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Tests.Music.Exercises;

/// <summary>The tables of names that files use.</summary>
public class NamesInFilesTests
{
    [Fact]
    public void Every_stage_is_found_by_its_file_name_and_has_words() => Assert.All(Enum.GetValues<Stage>(), stage =>
    {
        Assert.True(StageData.TryFind(StageData.Id(stage), out Stage found));
        Assert.Equal(stage, found);
        Assert.NotEqual("", StageData.Words(stage));
    });

    [Fact]
    public void Every_purpose_is_found_by_its_file_name_and_has_words() => Assert.All(Enum.GetValues<Purpose>(), purpose =>
    {
        Assert.True(PurposeData.TryFind(PurposeData.Id(purpose), out Purpose found));
        Assert.Equal(purpose, found);
        Assert.NotEqual("", PurposeData.Words(purpose));
    });

    [Fact]
    public void Names_are_unique_and_follow_the_order_of_a_warm_up()
    {
        Assert.Equal(["body", "breathing", "humming", "lip-trill", "slide", "sung", "settling"], StageData.Ids);
        Assert.Equal(Enum.GetValues<Purpose>().Length, PurposeData.Ids.Distinct().Count());
    }

    [Fact]
    public void Other_names_are_not_found()
    {
        Assert.False(StageData.TryFind("Sung", out _));
        Assert.False(PurposeData.TryFind("tuning", out _));
    }
}
