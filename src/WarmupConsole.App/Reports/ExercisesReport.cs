using System.Text.Json;
using System.Text.Json.Serialization;
using WarmupConsole.Music.Exercises;

namespace WarmupConsole.App.Reports;

/// <summary>Exercises as <c>warmup exercises --json</c> prints them.</summary>
internal sealed record ExercisesReport(IReadOnlyList<ExerciseReport> Exercises)
{
    /// <summary>The file that it was written to; only after a command that writes.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Written { get; init; }

    internal static ExercisesReport From(IEnumerable<Exercise> exercises) => new([.. exercises.Select(ExerciseReport.From)]);

    internal string ToJson() => JsonSerializer.Serialize(this, ReportJson.Default.ExercisesReport);
}
