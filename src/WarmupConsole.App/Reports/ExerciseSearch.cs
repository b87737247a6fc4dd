using WarmupConsole.Music.Exercises;

namespace WarmupConsole.App.Reports;

/// <summary>What is asked of exercises: all of it must be met.</summary>
/// <param name="Words">Each must stand in the id, the title, the purposes or the texts; upper and lower case are the same.</param>
/// <param name="Stage">Name of a stage in files, or null.</param>
/// <param name="Purpose">Name of a purpose in files or of a family of them ("tuning"), or null.</param>
internal sealed record ExerciseSearch(IReadOnlyList<string> Words, string? Stage, string? Purpose)
{
    internal static IReadOnlyList<string> Families { get; } = [.. PurposeData.Ids.Select(id => id.Split('.')[0]).Distinct()];

    /// <summary>Those that meet it, by stage, then by id.</summary>
    internal IReadOnlyList<Exercise> In(IEnumerable<Exercise> exercises) =>
        [.. exercises.Where(Meets).OrderBy(exercise => exercise.Stage).ThenBy(exercise => exercise.Id, StringComparer.Ordinal)];

    private bool Meets(Exercise exercise) =>
        (Stage is null || StageData.Id(exercise.Stage) == Stage)
        && (Purpose is null || exercise.Purposes.Select(PurposeData.Id).Any(id => id == Purpose || id.StartsWith(Purpose + ".", StringComparison.Ordinal)))
        && Words.All(word => Text(exercise).Contains(word, StringComparison.OrdinalIgnoreCase));

    private static string Text(Exercise exercise) => string.Join('\n', (IEnumerable<string>)
    [
        exercise.Id, exercise.Title, exercise.Instruction, exercise.Listen,
        .. exercise.Purposes.Select(PurposeData.Id), .. exercise.Purposes.Select(PurposeData.Words),
    ]);
}
