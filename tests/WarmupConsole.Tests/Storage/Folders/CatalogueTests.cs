using WarmupConsole.Music.Exercises;
using WarmupConsole.Storage.Folders;

namespace WarmupConsole.Tests.Storage.Folders;

public sealed class CatalogueTests
{
    [Fact]
    public void The_shipped_catalogue_reads_without_a_problem() => Assert.Empty(Catalogue.Load().Problems);

    [Theory]
    [InlineData(Stage.Body, 2)]
    [InlineData(Stage.Breathing, 6)]
    [InlineData(Stage.Humming, 4)]
    [InlineData(Stage.LipTrill, 4)]
    [InlineData(Stage.Sung, 10)]
    public void It_holds_enough_for_each_stage(Stage stage, int atLeast) =>
        Assert.True(Catalogue.Load().Value!.Count(exercise => exercise.Stage == stage) >= atLeast);
}
