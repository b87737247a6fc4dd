using System.Text.Json.Serialization;

namespace WarmupConsole.App.Reports;

/// <summary>The JSON shapes of all reports, generated at build time.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower, WriteIndented = true)]
[JsonSerializable(typeof(CalendarReport))]
[JsonSerializable(typeof(CheckReport))]
[JsonSerializable(typeof(DecisionReport))]
[JsonSerializable(typeof(ExercisesReport))]
[JsonSerializable(typeof(ExplanationReport))]
[JsonSerializable(typeof(KeysReport))]
[JsonSerializable(typeof(NeedsReport))]
[JsonSerializable(typeof(NextPlanReport))]
[JsonSerializable(typeof(PortsReport))]
[JsonSerializable(typeof(RangesReport))]
[JsonSerializable(typeof(ReviewReport))]
[JsonSerializable(typeof(Scores.MapReport))]
[JsonSerializable(typeof(Scores.ScoreReport))]
[JsonSerializable(typeof(SeasonReport))]
[JsonSerializable(typeof(ExportReport))]
[JsonSerializable(typeof(WrittenReport))]
internal sealed partial class ReportJson : JsonSerializerContext;
