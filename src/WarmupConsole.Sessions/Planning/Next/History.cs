using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>What the choir sang when, from plans and logs: of a day with a log only what was led counts.</summary>
internal sealed class History
{
    private const int DaysInWeek = 7;
    private const int RecentPlans = 3;

    private readonly Dictionary<string, DateOnly> _lastDay = [];
    private readonly Dictionary<Purpose, DateOnly> _lastServed = [];
    private readonly HashSet<string> _known = [];
    private readonly NextPlanInput _input;

    internal History(NextPlanInput input)
    {
        _input = input;
        HashSet<DateOnly> logged = [.. input.Led.Select(led => led.Day)];
        foreach (Plan plan in input.Before)
        {
            bool isLogged = plan.Date is { } date && logged.Contains(date);
            _known.UnionWith(isLogged ? [] : plan.Steps.Select(step => step.ExerciseId));
            if (!isLogged && plan.Date is { } day)
            {
                Note(day, plan.Steps.Select(step => step.ExerciseId));
            }
        }

        foreach (LedSession led in input.Led)
        {
            _known.UnionWith(led.Exercises);
            Note(led.Day, led.Exercises);
        }

        // What a cut-off run never came to is owed, not unknown.
        _known.UnionWith(input.Last?.Steps.Select(step => step.ExerciseId) ?? []);
    }

    /// <summary>False when no plan and no log tells anything: then nothing counts as new.</summary>
    internal bool IsThere => _known.Count > 0;

    internal bool IsNew(string exerciseId) => IsThere && !_known.Contains(exerciseId);

    internal DateOnly? LastDayOf(string exerciseId) => _lastDay.TryGetValue(exerciseId, out DateOnly day) ? day : null;

    /// <summary>Whole weeks since it was sung, or null when no dated plan or log has it.</summary>
    internal int? WeeksSince(string exerciseId) => LastDayOf(exerciseId) is { } day ? WeeksFrom(day) : null;

    internal DateOnly? LastDayOf(Purpose purpose) => _lastServed.TryGetValue(purpose, out DateOnly day) ? day : null;

    /// <summary>Whole weeks since some exercise served it, or null when none did.</summary>
    internal int? WeeksSince(Purpose purpose) => LastDayOf(purpose) is { } day ? WeeksFrom(day) : null;

    /// <summary>In how many of the last three plans it was.</summary>
    internal int RecentTimes(string exerciseId) =>
        _input.Before.Where(plan => plan.Steps.Count > 0).TakeLast(RecentPlans).Count(plan => plan.Steps.Any(step => step.ExerciseId == exerciseId));

    internal bool IsInLast(string exerciseId) => _input.Last?.Steps.Any(step => step.ExerciseId == exerciseId) == true;

    private int WeeksFrom(DateOnly day) => Math.Max(0, _input.Date.DayNumber - day.DayNumber) / DaysInWeek;

    private void Note(DateOnly day, IEnumerable<string> exercises)
    {
        foreach (string id in exercises.Where(_ => day < _input.Date))
        {
            _lastDay[id] = _lastDay.TryGetValue(id, out DateOnly known) && known > day ? known : day;
            foreach (Purpose purpose in _input.Exercises.TryGetValue(id, out Exercise? exercise) ? exercise.Purposes : [])
            {
                _lastServed[purpose] = _lastServed.TryGetValue(purpose, out DateOnly served) && served > day ? served : day;
            }
        }
    }
}
