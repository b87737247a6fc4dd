using System.Text.Json;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Reports;

/// <summary>The check of a plan as <c>warmup check --json</c> prints it.</summary>
internal sealed record CheckReport(
    string File,
    int Minutes,
    double PlannedSeconds,
    int Errors,
    int Warnings,
    int Hints,
    IReadOnlyList<CheckReport.Remark> Remarks,
    IReadOnlyList<CheckReport.Range> Ranges)
{
    internal static CheckReport From(CheckedPlan plan) => new(
        plan.Path,
        plan.Warmup.Plan.Minutes,
        Math.Round(plan.Warmup.Planned.TotalSeconds, 1),
        plan.Errors,
        plan.Count(PlanSeverity.Warning),
        plan.Count(PlanSeverity.Hint),
        [.. plan.Remarks.Open.Concat(plan.Remarks.Off).Select(remark => Of(plan, remark))],
        [.. PartCoverage.Of(plan.Warmup).Select(Of)]);

    internal string ToJson() => JsonSerializer.Serialize(this, ReportJson.Default.CheckReport);

    private static Remark Of(CheckedPlan plan, PlanRemark remark)
    {
        YamlPlace place = plan.Place(remark);
        string? exercise = remark.Step is { } step ? plan.Warmup.Steps[step].Exercise.Id : null;
        return new(CheckedPlan.Word(remark.Severity), remark.Rule, place.Line, place.Column, remark.Step + 1, exercise, remark.Sentence, plan.OffBecause(remark.Rule));
    }

    private static Range Of(PartCoverage part) => new(
        part.Part.Id,
        part.Reached?.Low.Midi,
        part.Reached?.High.Midi,
        [part.Part.Range.Comfortable.Low.Midi, part.Part.Range.Comfortable.High.Midi],
        [part.Part.Range.Extreme.Low.Midi, part.Part.Range.Extreme.High.Midi]);

    /// <param name="Severity">error, warning or hint.</param>
    /// <param name="Rule">Name of the rule.</param>
    /// <param name="Line">From 1.</param>
    /// <param name="Column">From 1.</param>
    /// <param name="Step">From 1; null for the plan.</param>
    /// <param name="Exercise">Id of the exercise of the step; null for the plan.</param>
    /// <param name="Sentence">What is wrong, why, what to do.</param>
    /// <param name="OffBecause">Why the plan switches the rule off; null when it counts.</param>
    internal sealed record Remark(string Severity, string Rule, int Line, int Column, int? Step, string? Exercise, string Sentence, string? OffBecause);

    /// <summary>What a part sings, as sounding MIDI numbers; null when it rests.</summary>
    internal sealed record Range(string Part, int? Low, int? High, IReadOnlyList<int> Comfortable, IReadOnlyList<int> Extreme);
}
