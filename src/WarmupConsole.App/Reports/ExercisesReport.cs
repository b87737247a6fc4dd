using System.Text.Json;
using System.Text.Json.Serialization;
using WarmupConsole.Music.Exercises;

namespace WarmupConsole.App.Reports;

/// <summary>Exercises as <c>warmup exercises --json</c> prints them.</summary>
internal sealed record ExercisesReport(IReadOnlyList<ExercisesReport.One> Exercises)
{
    /// <summary>The file that it was written to; only after a command that writes.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Written { get; init; }

    internal static ExercisesReport From(IEnumerable<Exercise> exercises) => new([.. exercises.Select(Of)]);

    internal string ToJson() => JsonSerializer.Serialize(this, ReportJson.Default.ExercisesReport);

    private static One Of(Exercise exercise) => new(
        exercise.Id,
        exercise.Title,
        StageData.Id(exercise.Stage),
        [.. exercise.Purposes.Select(PurposeData.Id)],
        exercise.Pattern is { } pattern ? PatternText.Write(pattern) : null,
        exercise.Instruction,
        ExerciseNumbers.Of(exercise));

    /// <param name="Id">As plans name it.</param>
    /// <param name="Title">As it is shown.</param>
    /// <param name="Stage">Name in files.</param>
    /// <param name="Purposes">Names in files.</param>
    /// <param name="Pattern">The line of degrees; null for body and breathing.</param>
    /// <param name="Instruction">To the singers.</param>
    /// <param name="Demands">What it asks of the voice; null for body and breathing.</param>
    internal sealed record One(string Id, string Title, string Stage, IReadOnlyList<string> Purposes, string? Pattern, string Instruction, ExerciseNumbers? Demands);
}
