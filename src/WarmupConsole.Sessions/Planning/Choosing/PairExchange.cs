namespace WarmupConsole.Sessions.Planning.Choosing;

/// <summary>Betters a plan by exchanging two steps at once: where the minutes are full, one step can often only change if another does.</summary>
internal sealed class PairExchange
{
    /// <summary>So many of what brings most are tried as the first of the two.</summary>
    private const int MostFirsts = 20;
    private const int MostRounds = 4;

    private readonly Standing _standing;
    private readonly ByExercise _exercises;
    private readonly bool[] _isUsed;
    private (long Score, int[] Taken, int[] Put) _best;

    internal PairExchange(Standing standing, ByExercise exercises)
    {
        (_standing, _exercises) = (standing, exercises);
        _isUsed = new bool[exercises.Choices.Length];
    }

    /// <summary>The plan with the best such exchanges made, one after another, or the one given.</summary>
    internal ChosenPlan From(ChosenPlan plan)
    {
        _standing.Set(plan.Choices);
        for (int round = 0; round < MostRounds; round++)
        {
            _best = (_standing.Score, [], []);
            int[] steps = [.. _standing.Steps];
            for (int first = 0; first < steps.Length; first++)
            {
                for (int second = first + 1; second < steps.Length; second++)
                {
                    PutInstead(steps[first], steps[second]);
                }
            }

            Array.ForEach(_best.Taken, _standing.Remove);
            Array.ForEach(_best.Put, _standing.Add);
            plan = _standing.Better(plan);
            if (_best.Taken.Length == 0)
            {
                break;
            }
        }

        return plan;
    }

    private void PutInstead(int one, int other)
    {
        _standing.Remove(one);
        _standing.Remove(other);
        Array.Clear(_isUsed);
        foreach (int step in _standing.Steps)
        {
            _isUsed[_exercises.Of[step]] = true;
        }

        foreach (int first in Firsts())
        {
            _standing.Add(first);
            _isUsed[_exercises.Of[first]] = true;
            PutSecond(first, one, other);
            _isUsed[_exercises.Of[first]] = false;
            _standing.Remove(first);
        }

        _standing.Add(one);
        _standing.Add(other);
    }

    private void PutSecond(int first, int one, int other)
    {
        for (int exercise = 0; exercise < _isUsed.Length; exercise++)
        {
            if (_isUsed[exercise] || _standing.MostWith(exercise, out long alike) <= _best.Score)
            {
                continue;
            }

            foreach (int second in _exercises.Choices[exercise])
            {
                if (_standing.ScoreWith(second, alike, _best.Score) is var score && score > _best.Score)
                {
                    _best = (score, [one, other], [first, second]);
                }
            }
        }
    }

    /// <summary>What would add most to the value, the most first.</summary>
    private List<int> Firsts()
    {
        List<int> firsts = [];
        for (int exercise = 0; exercise < _isUsed.Length; exercise++)
        {
            if (_isUsed[exercise] || (firsts.Count == MostFirsts && _standing.MostGainOf(exercise) <= _standing.GainOf(firsts[^1])))
            {
                continue;
            }

            foreach (int choice in _exercises.Choices[exercise])
            {
                firsts.Insert(PlaceOf(choice, firsts), choice);
                firsts.RemoveRange(Math.Min(firsts.Count, MostFirsts), Math.Max(0, firsts.Count - MostFirsts));
            }
        }

        return firsts;
    }

    private int PlaceOf(int choice, List<int> firsts)
    {
        long gain = _standing.GainOf(choice);
        int place = firsts.Count;
        while (place > 0 && _standing.GainOf(firsts[place - 1]) < gain)
        {
            place--;
        }

        return place;
    }
}
