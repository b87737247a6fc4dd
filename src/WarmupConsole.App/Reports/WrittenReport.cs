using System.Text.Json;

namespace WarmupConsole.App.Reports;

/// <summary>Files that a command wrote, as it prints them with <c>--json</c> when it has nothing else to tell.</summary>
internal sealed record WrittenReport(IReadOnlyList<string> Written)
{
    internal string ToJson() => JsonSerializer.Serialize(this, ReportJson.Default.WrittenReport);
}
