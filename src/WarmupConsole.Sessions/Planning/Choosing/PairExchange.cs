namespace WarmupConsole.Sessions.Planning.Choosing;

/// <summary>Betters a plan by exchanging two steps at once: where the minutes are full, one step can often only change if another does.</summary>
internal sealed class PairExchange
{
    /// <summary>So many of what brings most are tried as the first of the two.</summary>
    private const int MostFirsts = 20;
    private const int MostRounds = 4;

    private readonly PlanProblem _problem;
    private readonly Standing _standing;

    internal PairExchange(PlanProblem problem, Standing standing) => (_problem, _standing) = (problem, standing);

    /// <summary>The plan with the best such exchanges made, one after another, or the one given.</summary>
    internal ChosenPlan From(ChosenPlan plan)
    {
        _standing.Set(plan.Choices);
        for (int round = 0; round < MostRounds; round++)
        {
            (long score, int[] taken, int[] put) = (_standing.Score, [], []);
            int[] steps = [.. _standing.Steps];
            for (int first = 0; first < steps.Length; first++)
            {
                for (int second = first + 1; second < steps.Length; second++)
                {
                    (score, taken, put) = Instead(steps[first], steps[second], (score, taken, put));
                }
            }

            Array.ForEach(taken, _standing.Remove);
            Array.ForEach(put, _standing.Add);
            plan = _standing.Better(plan);
            if (taken.Length == 0)
            {
                break;
            }
        }

        return plan;
    }

    private (long Score, int[] Taken, int[] Put) Instead(int one, int other, (long Score, int[] Taken, int[] Put) best)
    {
        _standing.Remove(one);
        _standing.Remove(other);
        HashSet<int> used = [.. _standing.Steps.Select(step => _problem.Choices[step].Exercise)];
        int[] free = [.. Enumerable.Range(0, _problem.Choices.Count).Where(choice => !used.Contains(_problem.Choices[choice].Exercise))];
        foreach (int first in free.OrderByDescending(_standing.GainOf).Take(MostFirsts))
        {
            _standing.Add(first);
            foreach (int second in free)
            {
                if (_standing.Value + _standing.GainOf(second) > best.Score
                    && _problem.Choices[second].Exercise != _problem.Choices[first].Exercise && _standing.ScoreWith(second) is var score && score > best.Score)
                {
                    best = (score, [one, other], [first, second]);
                }
            }

            _standing.Remove(first);
        }

        _standing.Add(one);
        _standing.Add(other);
        return best;
    }
}
