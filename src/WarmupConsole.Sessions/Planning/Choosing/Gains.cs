namespace WarmupConsole.Sessions.Planning.Choosing;

/// <summary>
/// The value of a plan in the making, and what each choice would add to it. Aims that all choices of an exercise serve (most of them) are reckoned once for
/// the exercise: so little changes when a step comes or goes.
/// </summary>
internal sealed class Gains
{
    // Arrays, since a search asks a million times.
    private readonly ByExercise _exercises;
    private readonly int[][] _points;
    private readonly int[][] _aimsOf;
    private readonly int[] _times;
    private readonly int[][] _exercisesWith;
    private readonly int[][] _choicesWith;
    private readonly int[] _shared;
    private readonly int[] _apart;
    private readonly int[] _mostApart;

    internal Gains(PlanProblem problem, ByExercise exercises)
    {
        _exercises = exercises;
        _points = [.. problem.Aims.Select(points => points.ToArray())];
        _times = new int[_points.Length];
        _aimsOf = [.. problem.Choices.Select(choice => choice.Aims.ToArray())];
        int[][] shared = [.. exercises.Choices.Select(choices => choices.Select(choice => _aimsOf[choice]).Aggregate((some, others) => [.. some.Intersect(others)]))];
        int[][] apart = [.. _aimsOf.Select((aims, choice) => aims.Except(shared[exercises.Of[choice]]).ToArray())];
        _exercisesWith = Inverse(shared);
        _choicesWith = Inverse(apart);
        _shared = [.. shared.Select(FirstPoints)];
        _apart = [.. problem.Choices.Zip(apart, (choice, aims) => choice.Own + FirstPoints(aims))];
        _mostApart = [.. exercises.Choices.Select(choices => choices.Max(choice => _apart[choice]))];
    }

    /// <summary>Of the plan.</summary>
    internal long Value { get; private set; }

    /// <summary>What one choice more would add to the value; of one that is in the plan it means nothing.</summary>
    internal long Of(int choice) => _shared[_exercises.Of[choice]] + _apart[choice];

    /// <summary>What all choices of an exercise would add alike.</summary>
    internal long AlikeOf(int exercise) => _shared[exercise];

    /// <summary>What a choice would add to that.</summary>
    internal long ApartOf(int choice) => _apart[choice];

    /// <summary>No choice of the exercise would add more to that: aims pay most the first time.</summary>
    internal long MostApartOf(int exercise) => _mostApart[exercise];

    internal void Add(int choice)
    {
        Value += Of(choice);
        Serve(choice, 1);
    }

    internal void Remove(int choice)
    {
        Serve(choice, -1);
        Value -= Of(choice);
    }

    /// <summary>An aim is served once more or once less: what it pays next changes for every choice that serves it.</summary>
    private void Serve(int choice, int sign)
    {
        foreach (int aim in _aimsOf[choice])
        {
            int before = Pays(aim);
            _times[aim] += sign;
            int change = Pays(aim) - before;
            if (change != 0)
            {
                Change(_shared, _exercisesWith[aim], change);
                Change(_apart, _choicesWith[aim], change);
            }
        }
    }

    private static void Change(int[] gains, int[] those, int change)
    {
        foreach (int one in those)
        {
            gains[one] += change;
        }
    }

    private int Pays(int aim) => _times[aim] < _points[aim].Length ? _points[aim][_times[aim]] : 0;

    private int FirstPoints(int[] aims) => aims.Sum(Pays);

    /// <summary>For each aim those that have it.</summary>
    private int[][] Inverse(int[][] aimsOf)
    {
        ILookup<int, int> having = aimsOf.Index().SelectMany(one => one.Item.Select(aim => (aim, one.Index))).ToLookup(pair => pair.aim, pair => pair.Index);
        return [.. Enumerable.Range(0, _points.Length).Select(aim => having[aim].ToArray())];
    }
}
