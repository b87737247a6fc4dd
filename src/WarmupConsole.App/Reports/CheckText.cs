using System.Globalization;
using System.Text;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Reports;

/// <summary>The check of a plan for a director to read: a line for each remark with its place, errors first, then what each part sings.</summary>
internal static class CheckText
{
    internal static string Write(CheckedPlan plan)
    {
        StringBuilder text = new();
        foreach (PlanRemark remark in plan.Remarks.Open)
        {
            text.Append(CultureInfo.InvariantCulture, $"{Head(plan, remark)}: {CheckedPlan.Word(remark.Severity)} ({remark.Rule}): {Printable.Line(remark.Sentence)}\n");
        }

        foreach (RuleOff off in plan.Warmup.Plan.Off)
        {
            text.Append(Printable.Line(AppTexts.RuleIsOff(off.Rule, off.Because, plan.Remarks.Off.Count(remark => remark.Rule == off.Rule)))).Append('\n');
        }

        Ranges(text, plan.Warmup);
        int errors = plan.Errors;
        return text.Append(CultureInfo.InvariantCulture, $"{ClockText.Of(plan.Warmup.Planned)} planned of {plan.Warmup.Plan.Minutes}:00; errors: {errors}, warnings: {plan.Count(PlanSeverity.Warning)}, hints: {plan.Count(PlanSeverity.Hint)}.\n").ToString();
    }

    /// <summary>Nothing is written of a plan in which nobody sings.</summary>
    private static void Ranges(StringBuilder text, Warmup warmup)
    {
        if (warmup.Steps.All(step => step.Ladder.Rungs.Count == 0))
        {
            return;
        }

        NoteNaming notes = warmup.Choir.Notes;
        text.Append(CultureInfo.InvariantCulture, $"{"",-16} {"sings",-10} {"comfortable",-12} extreme\n");
        foreach (PartCoverage part in PartCoverage.Of(warmup))
        {
            string reached = part.Reached?.In(notes) ?? "rests";
            text.Append(CultureInfo.InvariantCulture, $"{Printable.Line(part.Part.Name),-16} {reached,-10} {part.Part.Range.Comfortable.In(notes),-12} {part.Part.Range.Extreme.In(notes)}\n");
        }
    }

    private static string Head(CheckedPlan plan, PlanRemark remark)
    {
        YamlPlace place = plan.Place(remark);
        return string.Create(CultureInfo.InvariantCulture, $"{Printable.Line(plan.Path)}:{place.Line}:{place.Column}");
    }
}
