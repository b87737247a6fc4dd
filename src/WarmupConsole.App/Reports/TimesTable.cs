using System.Globalization;
using System.Text;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Findings.Practice;

namespace WarmupConsole.App.Reports;

/// <summary>How long each exercise usually takes, as a table of the page.</summary>
internal static class TimesTable
{
    internal static string Write(Practised practised)
    {
        if (practised.Exercises.Count == 0)
        {
            return "";
        }

        StringBuilder table = new("<h2>Time learnt</h2>\n<table>\n<caption>The middle one of all times an exercise was led, pauses left out.</caption>\n"
            + "<tr><th scope=\"col\">Exercise</th><th scope=\"col\">times</th><th scope=\"col\">talk</th><th scope=\"col\">with talk</th><th scope=\"col\">last</th></tr>\n");
        foreach (ExercisePractice exercise in practised.Exercises)
        {
            table.Append(
                CultureInfo.InvariantCulture,
                $"<tr><th scope=\"row\">{SeasonPage.Text(exercise.Title)}</th><td>{exercise.Times}</td><td>{ClockText.Of(exercise.Talk)}</td><td>{ClockText.Of(exercise.Spent)}</td><td>{exercise.Last:d MMM yyyy}</td></tr>\n");
        }

        return table.Append("</table>\n").ToString();
    }
}
