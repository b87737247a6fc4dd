namespace WarmupConsole.Sessions.Planning.Choosing;

/// <summary>
/// Chooses the steps of a plan: a tabu search for each number of steps, the best of each bettered by exchanges of two steps, and the best of all
/// searched on from there. Whole numbers only and nothing random: the same problem gives the same plan on every machine.
/// </summary>
public static class PlanSearch
{
    private const int MostRounds = 3;

    /// <summary>The best plan found; of two of equal value the one found first.</summary>
    public static ChosenPlan Best(PlanProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ChosenPlan best = new([], long.MinValue, false);
        if (problem.Choices.Count == 0)
        {
            return best with { Value = 0 };
        }

        int least = Math.Max(1, problem.Bands.Sum(band => band.Least));
        int most = Math.Min(problem.MostSteps, problem.Choices.DistinctBy(choice => choice.Exercise).Count());
        for (int steps = Math.Min(least, most); steps <= most; steps++)
        {
            best = Bettered(problem, new TabuSearch(problem, steps).Best(new([], long.MinValue, false)), best);
        }

        for (int round = 0; round < MostRounds; round++)
        {
            long before = best.Value;
            best = Bettered(problem, new TabuSearch(problem, best.Choices).Best(best), best);
            if (best.Value == before)
            {
                break;
            }
        }

        return best;
    }

    /// <summary>A plan with two steps exchanged at once as long as that helps, or the other where that is better.</summary>
    private static ChosenPlan Bettered(PlanProblem problem, ChosenPlan plan, ChosenPlan other)
    {
        ChosenPlan bettered = new PairExchange(problem, plan).Best(plan);
        return (bettered.IsWhole, bettered.Value).CompareTo((other.IsWhole, other.Value)) > 0 ? bettered : other;
    }
}
