using System.Text.Json;
using WarmupConsole.Sessions.Planning.Next;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Reports;

/// <summary>A proposed plan as <c>warmup plan next --json</c> prints it.</summary>
/// <param name="Written">Its file.</param>
/// <param name="Date">The day it is for.</param>
/// <param name="CarriedOnFrom">The day of the plan that it carries on; null where that has none.</param>
/// <param name="Steps">In order.</param>
/// <param name="Differences">As the text has them: a line for each step, and under it why.</param>
/// <param name="Unmet">A sentence for everything that it could not answer.</param>
internal sealed record NextPlanReport(
    string Written,
    string Date,
    string? CarriedOnFrom,
    IReadOnlyList<NextPlanReport.Step> Steps,
    IReadOnlyList<string> Differences,
    IReadOnlyList<string> Unmet)
{
    internal static NextPlanReport From(NextPlanInput input, NextPlanResult next, string path) => new(
        path,
        DayText.Write(input.Date),
        input.Last.Date is { } last ? DayText.Write(last) : null,
        [.. next.Plan.Steps.Select((step, index) => new Step(index + 1, step.ExerciseId, step.Because))],
        next.Differences,
        next.Unmet);

    internal string ToJson() => JsonSerializer.Serialize(this, ReportJson.Default.NextPlanReport);

    /// <param name="Number">From 1.</param>
    /// <param name="Exercise">Its id.</param>
    /// <param name="Because">Why it is there, a sentence each.</param>
    internal sealed record Step(int Number, string Exercise, IReadOnlyList<string> Because);
}
