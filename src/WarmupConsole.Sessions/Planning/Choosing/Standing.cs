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

    // Arrays, since a search asks a million times.
    private readonly PlanProblem _problem;
    private readonly Choice[] _choices;
    private readonly int[][] _aimsOf;
    private readonly int[][] _points;
    private readonly int[][] _choicesOf;
    private readonly int[] _times;
    private readonly long[] _gains;
    private readonly int[] _bands;
    private readonly List<int> _steps = [];
    private int _total;
    private int _fresh;
    private int _peaks;
    private int _tail;
    private long _priceOfSecond = UsualPrice;

    internal Standing(PlanProblem problem)
    {
        _problem = problem;
        _choices = [.. problem.Choices];
        _aimsOf = [.. problem.Choices.Select(choice => choice.Aims.ToArray())];
        _points = [.. problem.Aims.Select(points => points.ToArray())];
        _times = new int[_points.Length];
        ILookup<int, int> choices = _aimsOf.Index().SelectMany(choice => choice.Item.Select(aim => (aim, choice.Index))).ToLookup(pair => pair.aim, pair => pair.Index);
        _choicesOf = [.. Enumerable.Range(0, _points.Length).Select(aim => choices[aim].ToArray())];
        _gains = [.. _choices.Zip(_aimsOf, (choice, aims) => choice.Own + aims.Sum(aim => (long)_points[aim][0]))];
        _bands = new int[problem.Bands.Count];
    }

    /// <summary>Indices of choices, in the order of the plan.</summary>
    internal IReadOnlyList<int> Steps => _steps;

    internal long Value { get; private set; }

    internal long Score => Value - Price(-1, _priceOfSecond);

    /// <summary>True when every limit is kept.</summary>
    internal bool IsWhole => Price(-1, 1) == 0;

    /// <summary>The score with one choice more.</summary>
    internal long ScoreWith(int index) => Value + GainOf(index) - Price(index, _priceOfSecond);

    /// <summary>True when every limit is kept with one choice more.</summary>
    internal bool IsWholeWith(int index) => Price(index, 1) == 0;

    /// <summary>What one choice more would add to the value; of one that is in the plan it means nothing.</summary>
    internal long GainOf(int index) => _gains[index];

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
        Value += _gains[index];
        Array.ForEach(_aimsOf[index], aim => Serve(aim, 1));
        Count(_choices[index], 1);
    }

    internal void Remove(int index)
    {
        _steps.Remove(index);
        Array.ForEach(_aimsOf[index], aim => Serve(aim, -1));
        Value -= _gains[index];
        Count(_choices[index], -1);
    }

    /// <summary>An aim is served once more or once less: what it pays next changes for every choice that serves it.</summary>
    private void Serve(int aim, int sign)
    {
        int before = Pays(aim);
        _times[aim] += sign;
        int change = Pays(aim) - before;
        foreach (int choice in change == 0 ? [] : _choicesOf[aim])
        {
            _gains[choice] += change;
        }
    }

    private int Pays(int aim) => _times[aim] < _points[aim].Length ? _points[aim][_times[aim]] : 0;

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
        long value = isWhole ? Value : Value - Price(-1, UsualPrice);
        return (isWhole, value).CompareTo((other.IsWhole, other.Value)) > 0 ? new([.. _steps], value, isWhole) : other;
    }

    private void Count(Choice choice, int sign)
    {
        _total += sign * choice.Milliseconds;
        _bands[(int)choice.Band] += sign;
        _fresh += choice.IsNew ? sign : 0;
        _peaks += choice.IsPeak ? sign : 0;
        _tail += IsTail(choice) ? sign * choice.Milliseconds : 0;
    }

    /// <summary>What comes from the first peak on: peaks stand last of the sung steps, and only settling follows.</summary>
    private static bool IsTail(Choice choice) => choice.IsPeak || choice.Band == Band.Settling;

    /// <summary>What the limits broken cost, with one choice more where the index is not −1.</summary>
    private long Price(int more, long priceOfSecond)
    {
        Choice? choice = more < 0 ? null : _choices[more];
        int total = _total + (choice?.Milliseconds ?? 0);
        int tail = _tail + (choice is not null && IsTail(choice) ? choice.Milliseconds : 0);
        long late = Math.Max(Math.Max(_problem.Shortest - total, total - _problem.Longest), _peaks > 0 || choice is { IsPeak: true } ? (3 * tail) - total : 0);
        int broken = Math.Max(0, _fresh + (choice is { IsNew: true } ? 1 : 0) - _problem.MostNew) + BandsBroken(choice) + (OpensTooEarly(more) ? 1 : 0);
        return (broken * PriceOfLimit) + (late <= 0 ? 0 : (late + MillisecondsInSecond - 1) / MillisecondsInSecond * priceOfSecond);
    }

    private int BandsBroken(Choice? choice)
    {
        int broken = 0;
        for (int band = 0; band < _bands.Length; band++)
        {
            int steps = _bands[band] + (choice is not null && (int)choice.Band == band ? 1 : 0);
            (int least, int most) = _problem.Bands[band];
            broken += steps < least ? least - steps : steps > most ? steps - most : 0;
        }

        return broken;
    }

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
