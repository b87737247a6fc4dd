using WarmupConsole.Sessions.Planning.Choosing;

namespace WarmupConsole.Tests.Sessions.Planning.Choosing;

/// <summary>
/// Evenings from a seed, to compare the planner with the exact optimum: 60 to 100 exercises in several lengths each, 10 to 30 minutes, up to four findings and
/// four wishes, some of them of a part that is to be spared, purposes that are long or not long overdue. In size and points they are like those of a real choir; they do not depend on the
/// catalogue, so that the stored optima stay true when it grows.
/// </summary>
internal sealed class SeededProblems
{
    internal const int Count = 200;

    private const int Purposes = 22;
    private const int Habit = Purposes;
    private const int Ranges = Purposes + 1;
    private const int RangeEnds = 8;

    /// <summary>As in docs/planner.md.</summary>
    private const int CrossedKey = -60;
    private const int MostCrossedKeys = 5;

    /// <summary>Longer evenings may not be filled without taking a part where it is to be spared.</summary>
    private const int ShortEvening = 20;

    private static readonly Band[] Bands =
        [Band.Body, Band.Breathing, Band.HalfClosed, Band.HalfClosed, Band.Slide, Band.Sung, Band.Sung, Band.Sung, Band.Sung, Band.Sung, Band.Sung, Band.Settling];

    private readonly SeededNumbers _numbers;
    private readonly List<int[]> _aims = [];
    private readonly List<int> _targets = [];

    /// <summary>Aims of parts to spare, and how many keys stay clear of where they strained.</summary>
    private readonly List<(int Aim, int Keys)> _sparings = [];
    private readonly List<(int Demand, Choice Choice)> _choices = [];
    private readonly HashSet<Choice> _crossing = new(ReferenceEqualityComparer.Instance);

    private SeededProblems(int seed) => _numbers = new(seed);

    internal static PlanProblem Of(int seed, int? exercises = null) => new SeededProblems(seed).Make(exercises);

    private PlanProblem Make(int? wanted)
    {
        int minutes = _numbers.From(10, 30);
        MakeAims();
        int exercises = wanted ?? _numbers.From(60, 100);
        for (int exercise = 0; exercise < exercises; exercise++)
        {
            MakeExercise(exercise, exercise < Bands.Length ? Bands[exercise] : Bands[_numbers.From(0, Bands.Length - 1)]);
        }

        bool isLong = minutes >= 20;
        return new()
        {
            Choices = [.. _choices.Where(choice => minutes > ShortEvening || !_crossing.Contains(choice.Choice)).OrderBy(choice => choice.Choice.Band).ThenBy(choice => choice.Choice.IsPeak).ThenBy(choice => choice.Choice.FirstVowel).ThenBy(choice => choice.Demand).Select(choice => choice.Choice)],
            Aims = _aims,
            Shortest = (minutes * 60_000) - 14_900,
            Longest = (minutes * 60_000) + 14_900,
            MostSteps = Math.Clamp((minutes / 2) + 2, 4, 12),
            MostNew = 1,
            Bands = [(0, 1), (1, isLong ? 2 : 1), (1, isLong ? 3 : 2), (0, 1), (2, Math.Clamp(minutes / 3, 3, 6)), (1, 1)],
        };
    }

    private void MakeAims()
    {
        _aims.AddRange(Enumerable.Range(0, Purposes).Select(_ => new[] { 16 + (12 * _numbers.From(0, 8)), 6 }));
        _aims.Add([50, 50, 40, 20]);
        _aims.AddRange(Enumerable.Range(0, RangeEnds).Select(_ => new[] { 30 }));
        for (int finding = _numbers.From(0, 4); finding > 0; finding--)
        {
            AddAim([_numbers.From(300, 450), 120], 100);
        }

        for (int need = _numbers.From(0, 4); need > 0; need--)
        {
            AddAim([_numbers.From(180, 450), _numbers.From(40, 80)], 60);
        }
    }

    /// <summary>One in four is of a part to spare: it has no ladder of its own but is better met half-closed, softly and from above.</summary>
    private void AddAim(int[] points, int circumstance)
    {
        if (_numbers.OnceIn(4))
        {
            _sparings.Add((_aims.Count, _numbers.From(5, 8)));
            _aims.AddRange([points, [100], [60], [60]]);
        }
        else
        {
            _targets.Add(_aims.Count);
            _aims.AddRange([points, [circumstance]]);
        }
    }

    private void MakeExercise(int exercise, Band band)
    {
        bool isNew = _numbers.OnceIn(3);
        bool isKept = !isNew && _numbers.OnceIn(8);
        HashSet<int> purposes = [.. Enumerable.Range(0, _numbers.From(1, 5)).Select(_ => _numbers.From(0, Purposes - 1))];
        Choice common = new()
        {
            Exercise = exercise,
            Band = band,
            Milliseconds = 1000 * (isNew && band >= Band.HalfClosed ? 60 : 15),
            Own = _numbers.From(-80, 60) + (isNew ? 30 : 0),
            Aims = [.. purposes.Order(), .. isKept ? [Habit] : (int[])[]],
            IsNew = isNew,
            FirstVowel = band < Band.Slide ? FirstVowel.None : _numbers.OnceIn(2) ? FirstVowel.Open : FirstVowel.Closed,
        };
        int demand = _numbers.From(0, 100);
        int[] gentle = Gentle(band);
        IEnumerable<Choice> variants = band <= Band.Breathing ? InRounds(common) : band == Band.Settling ? InKeys(common, gentle, 1, 3, 7) : Ladders(common, gentle);
        _choices.AddRange(variants.Select(choice => (demand, choice)));
    }

    /// <summary>How an exercise meets a part to spare: 0 gently, 1 half-closed, 2 softly, 3 from above; empty where it is not gentle.</summary>
    private int[] Gentle(Band band)
    {
        bool isHalfClosed = band == Band.HalfClosed;
        (bool isGentle, bool isSoft, bool isFromAbove) = (_numbers.OnceIn(4), _numbers.OnceIn(2), _numbers.OnceIn(3));
        return !isHalfClosed && !isGentle ? [] : [0, .. isHalfClosed ? [1] : (int[])[], .. isSoft ? [2] : (int[])[], .. isFromAbove ? [3] : (int[])[]];
    }

    /// <summary>A ladder meets those parts to spare whom it leaves alone, and crosses the others.</summary>
    private Choice Spare(Choice choice, int[] gentle, (int Aim, int Keys)[] left, int keys) => Cross(
        choice with { Aims = [.. choice.Aims, .. left.SelectMany(one => gentle.Select(way => one.Aim + way))] }, _sparings.Except(left).Select(one => keys - one.Keys));

    /// <summary>In so many keys a part is taken where it is to be spared, for each part to spare.</summary>
    private Choice Cross(Choice choice, IEnumerable<int> keys)
    {
        int points = keys.Sum(count => CrossedKey * Math.Min(MostCrossedKeys, count));
        Choice crossing = choice with { Own = choice.Own + points };
        if (points < 0)
        {
            _crossing.Add(crossing);
        }

        return crossing;
    }

    private IEnumerable<Choice> InRounds(Choice common)
    {
        (int usual, int length) = (_numbers.From(2, 5), _numbers.From(10_000, 22_000));
        for (int rounds = Math.Max(1, usual - 3); rounds <= usual + 3; rounds++)
        {
            yield return common with { Milliseconds = common.Milliseconds + (rounds * length), Own = common.Own - (6 * Math.Abs(rounds - usual)) };
        }
    }

    /// <summary>There and back, one way, around what needs work, and to the summit.</summary>
    private IEnumerable<Choice> Ladders(Choice common, int[] gentle)
    {
        foreach (Choice choice in InKeys(common, gentle, 2, 3, 9).Concat(InKeys(common, gentle, 1, 4, 8)))
        {
            yield return choice;
        }

        int rung = _numbers.From(4_500, 9_000);
        foreach (int target in _targets.Where(_ => _numbers.OnceIn(3)))
        {
            int[] beside = [.. _targets.Where(other => other != target && _numbers.OnceIn(6))];
            IEnumerable<int> aims = common.Aims.Concat([target, .. _numbers.OnceIn(3) ? [target + 1] : (int[])[], .. beside]);
            int[] crossed = [.. _sparings.Select(_ => _numbers.OnceIn(3) ? _numbers.From(1, 3) : 0)];
            yield return Cross(common with { Milliseconds = common.Milliseconds + 3_000 + (7 * rung), Own = common.Own + 32, Aims = [.. aims] }, crossed);
        }

        if (common.Band == Band.Sung && _numbers.OnceIn(2))
        {
            int own = common.Own + 80 + _numbers.From(12, 50);
            int[] crossed = [.. _sparings.Select(_ => _numbers.OnceIn(2) ? MostCrossedKeys : 0)];
            yield return Cross(common with { Milliseconds = common.Milliseconds + 3_000 + (11 * rung), Own = own, IsPeak = true, Aims = [.. common.Aims, Ranges + 1, Ranges + 3] }, crossed);
            yield return Cross(common with { Milliseconds = common.Milliseconds + 3_000 + (6 * rung), Own = own, IsPeak = true, Aims = [.. common.Aims, Ranges + 5, Ranges + 7] }, crossed);
        }
    }

    private IEnumerable<Choice> InKeys(Choice common, int[] gentle, int ways, int fewest, int most)
    {
        int rung = _numbers.From(5_000, 11_000);
        int[] met = [.. _targets.Where(_ => ways == 2 && _numbers.OnceIn(5))];
        int end = Ranges + _numbers.From(0, RangeEnds - 1);
        for (int keys = fewest; keys <= most; keys += ways)
        {
            IEnumerable<int> aims = common.Aims.Concat(keys >= 5 ? met : []).Concat(keys >= 7 ? [end] : []);
            int rungs = ways == 2 ? (2 * keys) - 1 : keys;
            (int Aim, int Keys)[] left = [.. _sparings.Where(one => keys <= one.Keys)];
            yield return Spare(
                common with { Milliseconds = common.Milliseconds + 3_000 + (rungs * rung), Own = common.Own + (8 * Math.Min(5, keys)), Aims = [.. aims] }, gentle, left, keys);
        }
    }
}
