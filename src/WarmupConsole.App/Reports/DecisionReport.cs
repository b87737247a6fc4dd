using System.Text.Json;
using WarmupConsole.Storage.Decisions;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Reports;

/// <summary>What was decided about a finding, as <c>warmup review dismiss --json</c> and <c>restore --json</c> print it.</summary>
/// <param name="Finding">Its id.</param>
/// <param name="Dismissed">True when it is no longer told.</param>
/// <param name="On">The day.</param>
/// <param name="Why">The reason; empty for what is told again.</param>
internal sealed record DecisionReport(string Finding, bool Dismissed, string On, string Why)
{
    internal static DecisionReport From(Decision decision) => new(decision.Finding, decision.IsDismissal, DayText.Write(decision.On), decision.Why);

    internal string ToJson() => JsonSerializer.Serialize(this, ReportJson.Default.DecisionReport);
}
