namespace WarmupConsole.Sessions.Planning.Choosing;

/// <summary>Searches the plans with one number of steps: the best exchange of one step, again and again, not taking back a recent one.</summary>
internal sealed class TabuSearch
{
    /// <summary>A search that brings nothing better for a while is broken off.</summary>
    private const int MostMoves = 400;
    private const int MostIdleMoves = 120;

    /// <summary>Before every move: then all choices are out that may be.</summary>
    private const int Never = -1;

    private readonly Standing _standing;
    private readonly ByExercise _exercises;
    private readonly bool[] _isUsed;
    private readonly int[] _choiceOutUntil;
    private readonly int[] _exerciseOutUntil;
    private int _staysOut;
    private long _best;

    internal TabuSearch(Standing standing, ByExercise exercises)
    {
        (_standing, _exercises) = (standing, exercises);
        _choiceOutUntil = new int[exercises.Of.Length];
        _isUsed = new bool[exercises.Choices.Length];
        _exerciseOutUntil = new int[_isUsed.Length];
    }

    /// <summary>The best plan found from whatever brings most, one step after another.</summary>
    /// <param name="steps">How many; at most as many as there are exercises.</param>
    /// <param name="staysOut">Moves for which an exercise that went out stays out.</param>
    internal ChosenPlan From(int steps, int staysOut)
    {
        Restart([], staysOut);
        while (_standing.Steps.Count < steps)
        {
            Put(BestToPut(-1, 0, long.MinValue).Choice);
        }

        return Search(new([], long.MinValue, false));
    }

    /// <summary>The best plan found from one that is there already, or that one.</summary>
    internal ChosenPlan From(ChosenPlan plan, int staysOut)
    {
        Restart(plan.Choices, staysOut);
        return Search(plan);
    }

    private void Restart(IReadOnlyList<int> plan, int staysOut)
    {
        _standing.Set([]);
        (_best, _staysOut) = (long.MinValue, staysOut);
        Array.Clear(_choiceOutUntil);
        Array.Clear(_exerciseOutUntil);
        Array.Clear(_isUsed);
        foreach (int step in plan)
        {
            Put(step);
        }
    }

    private ChosenPlan Search(ChosenPlan best)
    {
        int lastGain = 0;
        for (int move = 1; move <= MostMoves && move - lastGain <= MostIdleMoves; move++)
        {
            if (_standing.IsWhole && _standing.Value > _best)
            {
                (_best, lastGain) = (_standing.Value, move);
            }

            best = _standing.Better(best);
            _standing.MovePrice();
            Exchange(move);
        }

        return _standing.Better(best);
    }

    private void Exchange(int move)
    {
        (long Score, int Out, int In) best = (long.MinValue, -1, -1);
        foreach (int step in _standing.Steps.ToArray())
        {
            _standing.Remove(step);
            (long score, int choice) = BestToPut(step, move, best.Score);
            best = choice >= 0 ? (score, step, choice) : best;
            _standing.Add(step);
        }

        if (best.In >= 0)
        {
            int exercise = _exercises.Of[best.Out];
            _standing.Remove(best.Out);
            _isUsed[exercise] = false;
            _choiceOutUntil[best.Out] = move + _staysOut;
            _exerciseOutUntil[exercise] = move + _staysOut;
            Put(best.In);
        }
    }

    private void Put(int choice)
    {
        _standing.Add(choice);
        _isUsed[_exercises.Of[choice]] = true;
    }

    /// <summary>
    /// The choice that is best in the place of one that was taken out (−1 for none) and brings more than some score, or −1. Its exercise may come
    /// again in other keys.
    /// </summary>
    private (long Score, int Choice) BestToPut(int instead, int move, long above)
    {
        (long Score, int Choice) best = (above, -1);
        int freed = instead < 0 ? -1 : _exercises.Of[instead];
        for (int exercise = 0; exercise < _isUsed.Length; exercise++)
        {
            if ((!_isUsed[exercise] || exercise == freed) && _standing.MostWith(exercise, out long alike) > best.Score)
            {
                bool isOut = exercise != freed && _exerciseOutUntil[exercise] > move;
                best = BetterOf((exercise, alike), instead, isOut ? Never : move, best);
            }
        }

        return best;
    }

    /// <summary>A better choice of one exercise, or the one there was. What came out not long ago must bring more than anything before.</summary>
    private (long Score, int Choice) BetterOf((int Number, long Alike) exercise, int instead, int move, (long Score, int Choice) best)
    {
        foreach (int choice in _exercises.Choices[exercise.Number])
        {
            long above = _choiceOutUntil[choice] > move ? Math.Max(best.Score, _best) : best.Score;
            if (choice != instead && _standing.ScoreWith(choice, exercise.Alike, above) is var score && score > above)
            {
                best = (score, choice);
            }
        }

        return best;
    }
}
