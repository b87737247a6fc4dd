using System.Globalization;
using WarmupConsole.Sessions.Findings.Estimates;

namespace WarmupConsole.Tests.Sessions.Findings.Estimates;

public class StratifiedTestTests
{
    [Fact]
    public void P_values_agree_with_exact_fractions() => Assert.All(EstimateReference.Rows("stratified"), row =>
        Assert.Equal(double.Parse(row[2], CultureInfo.InvariantCulture), StratifiedTest.PValue(row[1].Split(' ').Select(Stratum)), 10));

    /// <summary>The exact conditional test of Mantel's rabbits (1963), as an open statistics package documents it: two-sided 0.03994; the tails are alike.</summary>
    [Fact]
    public void The_published_example_of_five_doses_gives_its_published_value() =>
        Assert.Equal(0.03994, 2 * StratifiedTest.PValue(EstimateReference.Rows("stratified").Last()[1].Split(' ').Select(Stratum)), 5);

    [Fact]
    public void Strata_in_which_all_or_none_are_exposed_tell_nothing() =>
        Assert.Equal(1, StratifiedTest.PValue([new(8, 8, 3, 3), new(8, 0, 3, 0), new(8, 4, 0, 0)]));

    [Fact]
    public void Many_marks_are_judged_by_the_normal_law_much_like_few()
    {
        Stratum[] fifty = [.. Enumerable.Repeat(new Stratum(10, 4, 4, 2), 50)];
        double exact = StratifiedTest.PValue(fifty);
        double normal = StratifiedTest.PValue([.. fifty, new(1000, 1, 1, 0)]);
        Assert.InRange(normal / exact, 0.95, 1.05);
    }

    private static Stratum Stratum(string text)
    {
        int[] numbers = [.. text.Split('-').Select(number => int.Parse(number, CultureInfo.InvariantCulture))];
        return new(numbers[0], numbers[1], numbers[2], numbers[3]);
    }
}
