namespace WarmupConsole.Sessions.Planning.Choosing;

/// <summary>A plan in the making, with the sums that tell what another choice would bring: its value less the price of every limit that is broken.</summary>
internal sealed class Standing
{
    /// <summary>For one step too few, too many, too new or too open: above any value that breaking a limit could bring.</summary>
    private const long PriceOfLimit = 5000;

    /// <summary>Of a second; plans that break limits are compared at the usual one.</summary>
    private const long UsualPrice = 20;
    private const long LeastPrice = 2;
    private const long HighestPrice = 60;

    private const int MillisecondsInSecond = 1000;

    private readonly PlanProblem _problem;
    private readonly ByExercise _exercises;
    private readonly Gains _gains;
    private readonly Choice[] _choices;
    private readonly Choice[] _firstOf;
    private readonly (int Least, int Most)[] _limits;
    private readonly int[] _bands;
    private readonly List<int> _steps = [];
    private int _bandsBroken;
    private int _total;
    private int _fresh;
    private int _peaks;
    private int _tail;
    private long _priceOfSecond = UsualPrice;

    internal Standing(PlanProblem problem)
        : this(problem, new(problem.Choices))
    {
    }

    internal Standing(PlanProblem problem, ByExercise exercises)
    {
        (_problem, _exercises, _gains) = (problem, exercises, new(problem, exercises));
        _choices = [.. problem.Choices];
        _firstOf = [.. exercises.Choices.Select(choices => _choices[choices[0]])];
        _limits = [.. problem.Bands];
        _bands = new int[_limits.Length];
        _bandsBroken = BandsBroken();
    }

    /// <summary>Indices of choices, in the order of the plan.</summary>
    internal IReadOnlyList<int> Steps => _steps;

    internal long Value => _gains.Value;

    internal long Score => Value - Price(_priceOfSecond);

    /// <summary>True when every limit is kept.</summary>
    internal bool IsWhole => Price(1) == 0;

    /// <summary>The score with one choice more, where that is above some other; what does not come above it may be told too high, but not above it.</summary>
    /// <param name="index">Of the choice.</param>
    /// <param name="alike">What all choices of its exercise score alike.</param>
    /// <param name="above">The other score.</param>
    internal long ScoreWith(int index, long alike, long above)
    {
        long score = alike + _gains.ApartOf(index);
        score -= score > above ? PriceOfTime(_choices[index], _priceOfSecond) : 0;
        return score > above && OpensTooEarly(index) ? score - PriceOfLimit : score;
    }

    /// <summary>No choice of the exercise scores more.</summary>
    /// <param name="exercise">Its number.</param>
    /// <param name="alike">What all its choices score alike, before what tells them apart.</param>
    internal long MostWith(int exercise, out long alike)
    {
        alike = Value + _gains.AlikeOf(exercise) - (PriceOfLimit * BrokenWith(_firstOf[exercise]));
        return alike + _gains.MostApartOf(exercise);
    }

    /// <summary>True when every limit is kept with one choice more.</summary>
    internal bool IsWholeWith(int index) => BrokenWith(_choices[index]) == 0 && PriceOfTime(_choices[index], 1) == 0 && !OpensTooEarly(index);

    /// <summary>What one choice more would add to the value; of one that is in the plan it means nothing.</summary>
    internal long GainOf(int index) => _gains.Of(index);

    /// <summary>No choice of the exercise would add more.</summary>
    internal long MostGainOf(int exercise) => _gains.AlikeOf(exercise) + _gains.MostApartOf(exercise);

    /// <summary>
    /// For each second outside the minutes, or by which a peak comes too early: dearer while limits are broken, cheaper while they are kept. So the
    /// search goes to and fro across the border, where the best plans lie.
    /// </summary>
    internal void MovePrice() => _priceOfSecond = IsWhole
        ? Math.Max(LeastPrice, _priceOfSecond * 3 / 4)
        : Math.Min(HighestPrice, (_priceOfSecond * 4 / 3) + 1);

    internal void Add(int index)
    {
        _steps.Insert(~_steps.BinarySearch(index), index);
        _gains.Add(index);
        Count(_choices[index], 1);
    }

    internal void Remove(int index)
    {
        _steps.Remove(index);
        _gains.Remove(index);
        Count(_choices[index], -1);
    }

    /// <summary>Another plan in the place of this one.</summary>
    internal void Set(IEnumerable<int> plan)
    {
        while (_steps.Count > 0)
        {
            Remove(_steps[^1]);
        }

        _priceOfSecond = UsualPrice;
        foreach (int step in plan)
        {
            Add(step);
        }
    }

    /// <summary>This plan, or another where that is as good; plans that break limits are compared at the usual price.</summary>
    internal ChosenPlan Better(ChosenPlan other)
    {
        bool isWhole = IsWhole;
        long value = isWhole ? Value : Value - Price(UsualPrice);
        return (isWhole, value).CompareTo((other.IsWhole, other.Value)) > 0 ? new([.. _steps], value, isWhole) : other;
    }

    private void Count(Choice choice, int sign)
    {
        _total += sign * choice.Milliseconds;
        _bands[(int)choice.Band] += sign;
        _bandsBroken = BandsBroken();
        _fresh += choice.IsNew ? sign : 0;
        _peaks += choice.IsPeak ? sign : 0;
        _tail += IsTail(choice) ? sign * choice.Milliseconds : 0;
    }

    /// <summary>What comes from the first peak on: peaks stand last of the sung steps, and only settling follows.</summary>
    private static bool IsTail(Choice choice) => choice.IsPeak || choice.Band == Band.Settling;

    /// <summary>What the limits broken cost.</summary>
    private long Price(long priceOfSecond) =>
        (PriceOfLimit * (_bandsBroken + Math.Max(0, _fresh - _problem.MostNew) + (OpensTooEarly(-1) ? 1 : 0))) + PriceOfTime(null, priceOfSecond);

    /// <summary>What is outside the minutes, or from the first peak on before the last third, with one choice more or none.</summary>
    private long PriceOfTime(Choice? more, long priceOfSecond)
    {
        int total = _total + (more?.Milliseconds ?? 0);
        long late = Math.Max(_problem.Shortest - total, total - _problem.Longest);
        if (_peaks > 0 || more is { IsPeak: true })
        {
            int tail = _tail + (more is not null && IsTail(more) ? more.Milliseconds : 0);
            late = Math.Max(late, (3L * tail) - total);
        }

        return late <= 0 ? 0 : (late + MillisecondsInSecond - 1) / MillisecondsInSecond * priceOfSecond;
    }

    /// <summary>Limits of bands and of new exercises that are broken with one choice more.</summary>
    private int BrokenWith(Choice more)
    {
        int steps = _bands[(int)more.Band];
        (int least, int most) = _limits[(int)more.Band];
        int change = steps < least ? -1 : steps >= most ? 1 : 0;
        return _bandsBroken + change + Math.Max(0, _fresh + (more.IsNew ? 1 : 0) - _problem.MostNew);
    }

    private int BandsBroken()
    {
        int broken = 0;
        for (int band = 0; band < _bands.Length; band++)
        {
            broken += Math.Max(0, Math.Max(_limits[band].Least - _bands[band], _bands[band] - _limits[band].Most));
        }

        return broken;
    }

    /// <summary>With one choice more, or with none (−1).</summary>
    private bool OpensTooEarly(int more)
    {
        int first = more >= 0 && _choices[more].FirstVowel != FirstVowel.None ? more : int.MaxValue;
        foreach (int step in _steps)
        {
            if (_choices[step].FirstVowel != FirstVowel.None)
            {
                first = Math.Min(first, step);
                break;
            }
        }

        return first != int.MaxValue && _choices[first].FirstVowel == FirstVowel.Open;
    }
}
