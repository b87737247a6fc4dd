using WarmupConsole.Sessions.Planning.Choosing;

namespace WarmupConsole.Tests.Sessions.Planning.Choosing;

public sealed class PlanSearchTests
{
    /// <summary>Every plan of a small problem is tried: the search may miss the best, but seldom and never by much.</summary>
    [Fact]
    public void Against_all_plans_there_are_the_search_finds_nearly_always_the_best()
    {
        (int met, int best) = (0, 0);
        for (int seed = 1; seed <= 60; seed++)
        {
            PlanProblem problem = SmallProblems.Of(seed);
            ChosenPlan found = PlanSearch.Best(problem);
            if (SmallProblems.Best(problem) is { } optimum)
            {
                met++;
                best += found.IsWhole && found.Value == optimum ? 1 : 0;
                Assert.False(found.IsWhole && found.Value > optimum, $"seed {seed}: {found.Value} is more than there is, {optimum}");
            }
            else
            {
                Assert.False(found.IsWhole, $"seed {seed}: no plan keeps every limit");
            }
        }

        Assert.True(met >= 20 && best >= met * 9 / 10, $"{best} of {met}");
    }

    [Fact]
    public void What_it_finds_keeps_every_limit_has_the_value_it_says_and_comes_again() => Assert.All(Enumerable.Range(301, 12), seed =>
    {
        PlanProblem problem = SeededProblems.Of(seed);
        ChosenPlan found = PlanSearch.Best(problem);
        Assert.True(found.IsWhole);
        Assert.True(SmallProblems.Keeps(problem, found.Choices));
        Assert.Equal(problem.ValueOf(found.Choices), found.Value);
        Assert.Equal(found.Choices.Order(), found.Choices);
        Assert.Equal(found.Choices, PlanSearch.Best(SeededProblems.Of(seed)).Choices);
    });

    [Fact]
    public void Where_no_plan_keeps_the_minutes_the_nearest_one_is_found()
    {
        PlanProblem problem = SeededProblems.Of(1) with { Shortest = 7_200_000, Longest = 7_230_000 };
        ChosenPlan found = PlanSearch.Best(problem);
        Assert.False(found.IsWhole);
        Assert.Equal(problem.MostSteps, found.Choices.Count);
    }

    [Fact]
    public void Without_choices_there_is_no_plan() =>
        Assert.Equal((0, false), (PlanSearch.Best(SeededProblems.Of(1) with { Choices = [] }).Choices.Count, PlanSearch.Best(SeededProblems.Of(1) with { Choices = [] }).IsWhole));
}
