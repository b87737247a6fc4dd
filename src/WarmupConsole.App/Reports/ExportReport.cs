using System.Text.Json;

namespace WarmupConsole.App.Reports;

/// <summary>What <c>warmup export --json</c> prints.</summary>
/// <param name="Written">The files, in the order of the options.</param>
/// <param name="LeftOut">Steps in which no key fits; for one part alone, none that it sings with ease.</param>
internal sealed record ExportReport(IReadOnlyList<string> Written, IReadOnlyList<string> LeftOut)
{
    internal string ToJson() => JsonSerializer.Serialize(this, ReportJson.Default.ExportReport);
}
