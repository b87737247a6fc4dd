using System.Text.Json;
using WarmupConsole.Sessions.Planning.Next;

namespace WarmupConsole.App.Reports;

/// <summary>A plan explained as <c>warmup plan explain --json</c> prints it.</summary>
/// <param name="Value">Points of the whole plan.</param>
/// <param name="Best">Of the best plan that would be proposed now.</param>
/// <param name="Steps">In order.</param>
internal sealed record ExplanationReport(long Value, long Best, IReadOnlyList<ExplanationReport.Explained> Steps)
{
    internal static ExplanationReport From(PlanExplanation explanation) => new(
        explanation.Value,
        explanation.Best,
        [.. explanation.Steps.Select((step, index) => new Explained(index + 1, step.Title, step.Value, [.. step.Parts.Select(part => new Points(part.Points, part.Words))], step.Other.Length == 0 ? null : step.Other, step.Loss))]);

    internal string ToJson() => JsonSerializer.Serialize(this, ReportJson.Default.ExplanationReport);

    /// <param name="Number">From 1.</param>
    /// <param name="Title">Of its exercise.</param>
    /// <param name="Value">What the plan would lose without it.</param>
    /// <param name="Parts">Its points one by one.</param>
    /// <param name="Alternative">The best that could stand there instead, or null.</param>
    /// <param name="Loss">How many points less the plan would have with that.</param>
    internal sealed record Explained(int Number, string Title, long Value, IReadOnlyList<Points> Parts, string? Alternative, long Loss);

    /// <param name="Worth">May be negative.</param>
    /// <param name="Words">For what.</param>
    internal sealed record Points(int Worth, string Words);
}
