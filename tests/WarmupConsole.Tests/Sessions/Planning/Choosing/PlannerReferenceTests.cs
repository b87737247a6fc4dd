using System.Globalization;
using WarmupConsole.Sessions.Planning.Choosing;
using WarmupConsole.Tests.Architecture;

namespace WarmupConsole.Tests.Sessions.Planning.Choosing;

/// <summary>The planner against the exact optimum of 200 evenings: docs/planner-reference.csv is printed by tests/WarmupConsole.Reference.</summary>
public sealed class PlannerReferenceTests
{
    [Fact]
    public void Of_the_exact_optimum_the_median_is_99_per_cent_and_the_worst_97()
    {
        (int Seed, double Share, long Value, long Stored)[] shares =
        [
            .. Rows().AsParallel().AsOrdered().Select(row => (row.Seed, PlanSearch.Best(SeededProblems.Of(row.Seed)), row)).Select(found =>
                (found.Seed, found.Item2.IsWhole ? 100.0 * found.Item2.Value / found.row.Bound : 0, found.Item2.Value, found.row.Value)),
        ];
        Assert.Equal(Enumerable.Range(1, SeededProblems.Count), shares.Select(share => share.Seed));
        (int Seed, double Share, long Value, long Stored)[] sorted = [.. shares.OrderBy(share => share.Share)];
        Assert.True(sorted[sorted.Length / 2].Share >= 99 && sorted[0].Share >= 97, $"median {sorted[sorted.Length / 2].Share:0.00} %, worst seed {sorted[0].Seed}: {sorted[0].Share:0.00} %");
        Assert.True(shares.All(share => share.Value == share.Stored), "the planner changed: print docs/planner-reference.csv anew (tests/WarmupConsole.Reference)");
    }

    /// <summary>An upper bound is never below what was found, else the stored problems are not these.</summary>
    [Fact]
    public void No_plan_is_worth_more_than_the_stored_bound() => Assert.All(Rows(), row => Assert.True(row.Value <= row.Optimum && row.Optimum <= row.Bound, $"seed {row.Seed}"));

    /// <summary>A part to spare has three aims more, in this order: half-closed, softly, from above.</summary>
    [Fact]
    public void In_many_of_the_evenings_a_part_is_to_be_spared() =>
        Assert.InRange(Rows().Count(row => SeededProblems.Of(row.Seed).Aims is var aims && aims.Zip(aims.Skip(1), aims.Skip(2)).Any(three => (three.First[0], three.Second[0], three.Third[0]) == (100, 60, 60))), 80, 180);

    private static (int Seed, long Value, long Optimum, long Bound)[] Rows() =>
    [
        .. File.ReadLines(Path.Combine(Repository.Root, "docs", "planner-reference.csv")).Skip(1)
            .Select(line => line.Split(',').Select(number => long.Parse(number, CultureInfo.InvariantCulture)).ToArray())
            .Select(row => ((int)row[0], row[1], row[2], row[3])),
    ];
}
