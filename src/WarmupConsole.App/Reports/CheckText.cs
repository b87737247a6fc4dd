using System.Globalization;
using System.Text;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.App.Reports;

/// <summary>The remarks on a plan, a line each, errors first.</summary>
internal static class CheckText
{
    internal static string Write(Warmup warmup, IReadOnlyList<PlanRemark> remarks)
    {
        StringBuilder text = new();
        foreach (PlanRemark remark in remarks)
        {
            text.Append(CultureInfo.InvariantCulture, $"{Word(remark.Severity)} ({remark.Rule}){Place(warmup, remark)}: {remark.Sentence}\n");
        }

        int errors = remarks.Count(remark => remark.Severity == PlanSeverity.Error);
        return text.Append(CultureInfo.InvariantCulture, $"{Minutes.Of(warmup.Planned)} planned of {warmup.Plan.Minutes}:00; errors: {errors}, other remarks: {remarks.Count - errors}.\n").ToString();
    }

    private static string Place(Warmup warmup, PlanRemark remark) =>
        remark.Step is { } step ? $" step {step + 1}, {warmup.Steps[step].Exercise.Title}" : "";

    private static string Word(PlanSeverity severity) => severity switch
    {
        PlanSeverity.Error => "error",
        PlanSeverity.Warning => "warning",
        _ => "hint",
    };
}
