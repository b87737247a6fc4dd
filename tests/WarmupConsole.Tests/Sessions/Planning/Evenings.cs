using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Findings.Estimates;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Next;
using WarmupConsole.Tests.Sessions.Marks;

namespace WarmupConsole.Tests.Sessions.Planning;

/// <summary>Evenings to plan for, out of the shipped catalogue.</summary>
internal static class Evenings
{
    internal static readonly DateOnly NextWeek = new(2027, 2, 23);

    internal static IReadOnlyDictionary<string, Exercise> Catalogue { get; } = WarmupConsole.Storage.Folders.Catalogue.Exercises.ToDictionary(exercise => exercise.Id);

    /// <summary>Six earlier weeks with different exercises, so that there is something to vary from.</summary>
    internal static IReadOnlyList<Plan> Weeks { get; } = [.. Enumerable.Range(0, 6).Select(Week)];

    internal static NextPlanInput Usual { get; } = new()
    {
        Choir = SampleChoir.Four,
        Last = Weeks[^1],
        Earlier = [.. Weeks.SkipLast(1)],
        Exercises = Catalogue,
        Date = NextWeek,
        Minutes = 15,
    };

    internal static Finding Finding(string part, string kind, string pitch, params Circumstance[] circumstances) => new()
    {
        Id = $"{part}-{kind}-{pitch.ToLowerInvariant()}",
        Part = part,
        Kind = kind,
        Pitch = Pitch.Parse(pitch),
        Rate = Rate.Of(8, 24),
        Elsewhere = Rate.Of(3, 100),
        Strength = 9,
        Chance = 0.0001,
        Circumstances = circumstances,
        Trend = new(TrendDirection.TooEarly, default, default, 0.5),
        Sessions = [new("a", default, 4, 12), new("b", default, 4, 12)],
        Evidence = [],
    };

    internal static Warmup Ready(NextPlanInput input, Plan plan) => WarmupBuilder.Build(input.Choir, plan, input.Exercises);

    private static Plan Week(int week) => new()
    {
        Date = NextWeek.AddDays(-7 * (6 - week)),
        Steps =
        [
            .. Catalogue.Values.OrderBy(exercise => exercise.Id, StringComparer.Ordinal).GroupBy(exercise => exercise.Stage).OrderBy(stage => stage.Key)
                .SelectMany(stage => stage.Skip(week % 3).Take(stage.Key == Stage.Sung ? 6 : 1)).Select(exercise => new PlanStep { ExerciseId = exercise.Id }),
        ],
    };
}
