using System.Globalization;
using System.Text;
using WarmupConsole.App.Running;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Reports;

/// <summary>The last weeks in a director's words: findings with their evidence, range advice, and at the end what was left out.</summary>
internal static class SeasonText
{
    internal static string Write(SeasonReview review)
    {
        StringBuilder text = new();
        text.Append(CultureInfo.InvariantCulture, $"\n{Head(review)}\n");
        foreach ((int index, Finding finding) in review.Findings.Index())
        {
            Block(text, $"{index + 1}. {Capital(FindingText.Title(finding, review.Choir))}  [{finding.Id}]", FindingText.Sentences(finding, review.Choir));
        }

        foreach (RangeAdvice advice in review.Ranges)
        {
            Block(text, Capital(FindingText.Title(advice, review.Choir)), [FindingText.Sentence(advice, review.Choir)]);
        }

        Section(text, "Purposes", PracticeText.Purposes(review.Practised, review.Sessions.Count));
        Section(text, "Time learnt", PracticeText.Times(review.Practised));
        Section(text, "Dismissed", review.Dismissed.Select(SeasonReview.Dismissal));
        Section(text, "Left out", review.LeftOut.DefaultIfEmpty(SeasonTexts.Nothing));
        return text.ToString();
    }

    internal static string Head(SeasonReview review)
    {
        if (review.Sessions.Count == 0)
        {
            return "No session could be weighed.";
        }

        string sessions = review.Sessions.Count == 1 ? "1 session" : $"{review.Sessions.Count} sessions";
        string head = string.Create(
            CultureInfo.InvariantCulture, $"What {sessions} show, {review.Sessions[0].Start:d MMMM yyyy} to {review.Sessions[^1].Start:d MMMM yyyy}");
        return review.Findings.Count == 0 ? head + ": nothing stands out yet; chance would explain the marks as well." : head;
    }

    private static void Section(StringBuilder text, string title, IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        if (all.Length > 0)
        {
            Block(text, title, all);
        }
    }

    private static void Block(StringBuilder text, string title, IEnumerable<string> lines) => text
        .Append(CultureInfo.InvariantCulture, $"\n{Printable.Line(title)}\n")
        .AppendJoin("", lines.Select(line => $"   {Printable.Line(line)}\n"));

    private static string Capital(string sentence) => char.ToUpperInvariant(sentence[0]) + sentence[1..];
}
