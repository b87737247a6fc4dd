using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace WarmupConsole.Tests.Architecture;

/// <summary>What is typical of the sources: the limits of <see cref="TidyTests"/> are for the exception, these for the rule.</summary>
public class TypicalSizeTests
{
    private static readonly IReadOnlyList<SourceFile> Sources = Repository.Sources("src");

    [Fact]
    public void Files_are_short() => AssertTypical(Sources.Select(file => (file.Path, file.Lines)), mostMedian: 100, mostP90: 250);

    [Fact]
    public void Methods_are_short() => AssertTypical(
        Sources.SelectMany(file => file.Methods.Select(method => (file.At(method), SourceFile.LinesOf(method)))), mostMedian: 8, mostP90: 25);

    [Fact]
    public void Parameters_are_few() => AssertTypical(
        Sources.SelectMany(file => file.Tree.DescendantNodes().OfType<BaseMethodDeclarationSyntax>()
            .Select(method => (file.At(method), method.ParameterList.Parameters.Count))),
        mostMedian: 2,
        mostP90: 3);

    [Fact]
    public void A_file_holds_one_type() => AssertTypical(Sources.Select(file => (file.Path, file.TopLevelTypes.Count())), mostMedian: 1, mostP90: 1);

    /// <summary>On failure the largest tenth is listed: that is where to cut.</summary>
    private static void AssertTypical(IEnumerable<(string Place, int Size)> sizes, int mostMedian, int mostP90)
    {
        (string Place, int Size)[] all = [.. sizes.OrderByDescending(entry => entry.Size)];
        int median = Offenders.Percentile(all.Select(entry => entry.Size), 50);
        int p90 = Offenders.Percentile(all.Select(entry => entry.Size), 90);

        Assert.True(
            median <= mostMedian && p90 <= mostP90,
            $"median {median} (at most {mostMedian}), p90 {p90} (at most {mostP90}) of {all.Length}; the largest:\n  "
                + string.Join("\n  ", all.Take(1 + (all.Length / 10)).Select(entry => $"{entry.Place}: {entry.Size}")));
    }
}
