using System.Globalization;
using System.Text;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Next;
using WarmupConsole.Sessions.Planning.Seasons;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Reports;

/// <summary>A plan explained, for reading.</summary>
internal static class ExplanationText
{
    internal static string Write(Plan plan, PlanExplanation explanation)
    {
        StringBuilder text = new();
        text.Append(AppTexts.Explanation(explanation.Value, SeasonTexts.Where(explanation.Season), plan.Minutes, explanation.Best)).Append('\n');
        foreach ((int index, ExplainedStep step) in explanation.Steps.Index())
        {
            text.Append(CultureInfo.InvariantCulture, $"\n{index + 1,2}. {Printable.Line(step.Title)}: {step.Value}\n");
            foreach ((int points, string words) in step.Parts)
            {
                text.Append(CultureInfo.InvariantCulture, $"    {points,5:+0;-0}  {Printable.Line(words)}\n");
            }

            text.Append("           ").Append(Other(step)).Append('\n');
        }

        return text.ToString();
    }

    private static string Other(ExplainedStep step) => step switch
    {
        { Other.Length: 0 } => AppTexts.NoAlternative,
        { Loss: > 0 } => AppTexts.Alternative(Printable.Line(step.Other), step.Loss),
        { Loss: 0 } => AppTexts.EqualAlternative(Printable.Line(step.Other)),
        _ => AppTexts.BetterAlternative(Printable.Line(step.Other), -step.Loss),
    };
}
