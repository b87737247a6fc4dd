namespace WarmupConsole.Sessions.Planning.Choosing;

/// <summary>
/// Chooses the steps of a plan: a tabu search for each number of steps, from the most down until it gets worse, and one that goes further around the best number; what
/// they find is bettered by exchanges of two steps and searched on from there. Whole numbers only and nothing random: the same problem gives the same plan on every machine.
/// </summary>
public static class PlanSearch
{
    private const int MostRounds = 3;

    /// <summary>Moves for which an exercise that went out stays out; the longer, the further the search gets.</summary>
    private const int Usual = 20;
    private const int Long = 30;

    /// <summary>With so many numbers of steps in a row nothing better was found: fewer steps would be no better.</summary>
    private const int Enough = 3;

    /// <summary>The best plan found; of two of equal value the one found first.</summary>
    public static ChosenPlan Best(PlanProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ChosenPlan best = new([], long.MinValue, false);
        if (problem.Choices.Count == 0)
        {
            return best with { Value = 0 };
        }

        ByExercise exercises = new(problem.Choices);
        Standing standing = new(problem, exercises);
        TabuSearch tabu = new(standing, exercises);
        int most = Math.Min(problem.MostSteps, exercises.Choices.Length);
        int least = Math.Min(most, Math.Max(1, problem.Bands.Sum(band => band.Least)));
        int worse = 0;
        for (int steps = most; steps >= least && worse < Enough; steps--)
        {
            ChosenPlan found = tabu.From(steps, Usual);
            (best, worse) = found.IsBetterThan(best) ? (found, 0) : (best, worse + 1);
        }

        PairExchange pairs = new(standing, exercises);
        ChosenPlan near = best;
        for (int steps = Math.Max(least, best.Choices.Count - 1); steps <= Math.Min(most, best.Choices.Count + 1); steps++)
        {
            ChosenPlan found = Bettered(tabu.From(steps, Long), tabu, pairs);
            near = found.IsBetterThan(near) ? found : near;
        }

        best = Bettered(best, tabu, pairs);
        return near.IsBetterThan(best) ? near : best;
    }

    private static ChosenPlan Bettered(ChosenPlan best, TabuSearch tabu, PairExchange pairs)
    {
        for (int round = 0; round < MostRounds; round++)
        {
            ChosenPlan bettered = tabu.From(pairs.From(best), Usual);
            if (!bettered.IsBetterThan(best))
            {
                break;
            }

            best = bettered;
        }

        return best;
    }
}
