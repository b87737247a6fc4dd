using System.Net;
using System.Text;
using WarmupConsole.App.Running;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Reports;

/// <summary>
/// The review as one page that needs nothing else: no script, no network. Every chart has a name and a description for who listens to
/// it, and every number in it also stands in text or in a table. Shades of grey, so that paper shows what the screen shows.
/// </summary>
internal static class SeasonPage
{
    internal const string Style = """
        body{font:16px/1.5 system-ui,sans-serif;max-width:52rem;margin:2rem auto;padding:0 1rem;color:#111;background:#fff}
        h1{font-size:1.6rem}h2{font-size:1.25rem;margin-top:2.2rem;border-bottom:1px solid #999}
        figure{margin:1rem 0;break-inside:avoid}figcaption{font-size:.9rem}svg{max-width:100%;height:auto}
        svg text{font:12px system-ui,sans-serif;fill:#111}
        table{border-collapse:collapse;break-inside:avoid}th,td{border:1px solid #999;padding:.2rem .5rem;text-align:right}th:first-child,td:first-child{text-align:left}
        section{break-inside:avoid}pre{white-space:pre-wrap;font:13px/1.4 ui-monospace,monospace}
        @media print{body{margin:0;max-width:none;font-size:11pt}}
        """;

    /// <param name="review">What the last weeks show.</param>
    /// <param name="lastSession">The last session in words, as the terminal shows it; may be empty.</param>
    internal static string Write(SeasonReview review, string lastSession)
    {
        string title = $"{review.Choir.Name}: review of the warm-ups";
        StringBuilder page = new();
        page.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        page.Append($"<title>{Text(title)}</title>\n<style>\n{Style}\n</style>\n</head>\n<body>\n<main>\n<h1>{Text(title)}</h1>\n<p>{Text(SeasonText.Head(review))}</p>\n");
        page.Append("<h2>Findings</h2>\n");
        page.AppendJoin("", review.Findings.Select(finding => Finding(finding, review)));
        page.Append(review.Findings.Count == 0 ? "<p>None.</p>\n" : "");
        page.Append("<h2>Parts and pitches</h2>\n").Append(HeatMap.Write(review)).Append("<h2>Ranges</h2>\n");
        page.Append(List(review.Ranges.Select(advice => $"{FindingText.Title(advice, review.Choir)}: {FindingText.Sentence(advice, review.Choir)}").DefaultIfEmpty("No limit should move.")));
        page.Append("<h2>Purposes</h2>\n").Append(List(PracticeText.Purposes(review.Practised, review.Sessions.Count))).Append(TimesTable.Write(review.Practised));
        page.Append(lastSession.Length == 0 ? "" : $"<h2>Last session</h2>\n<pre>{WebUtility.HtmlEncode(lastSession)}</pre>\n");
        page.Append("<h2>Left out</h2>\n").Append(List(review.NotTold));
        return page.Append("</main>\n</body>\n</html>\n").ToString();
    }

    /// <summary>Safe to stand in a page, whatever was typed.</summary>
    internal static string Text(string text) => WebUtility.HtmlEncode(Printable.Line(text));

    private static string Finding(Finding finding, SeasonReview review)
    {
        string title = FindingText.Title(finding, review.Choir);
        string sentences = string.Join("", FindingText.Sentences(finding, review.Choir).Select(sentence => $"<p>{Text(sentence)}</p>\n"));
        return $"<section>\n<h3>{Text(title)}</h3>\n{sentences}{FindingCharts.Write(finding, review, title)}</section>\n";
    }

    private static string List(IEnumerable<string> items) => $"<ul>\n{string.Join("", items.Select(item => $"<li>{Text(item)}</li>\n"))}</ul>\n";
}
