using System.Globalization;
using System.Net;
using System.Text;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.TakeAlong;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Reports;

/// <summary>
/// A plan as one page for the music stand that needs nothing else: no script, no network, black on white. Tables and lists say what
/// they are, so that it can be listened to as well as read.
/// </summary>
internal static class SheetPage
{
    private const string Style = """
        body{font:15px/1.35 system-ui,sans-serif;max-width:60rem;margin:1.5rem auto;padding:0 1rem;color:#000;background:#fff}
        h1{font-size:1.4rem;margin:0 0 .2rem}h2{font-size:1.1rem;margin:1rem 0 .2rem}p{margin:.2rem 0}
        table{border-collapse:collapse;width:100%}caption{text-align:left;font-weight:bold;padding:.4rem 0}
        th,td{border-bottom:1px solid #888;padding:.2rem .4rem;text-align:left;vertical-align:top}thead th{border-bottom:2px solid #000}
        th[scope=row]{font-weight:600}td.number{text-align:right;white-space:nowrap}small{display:block;font-weight:400}
        th:nth-child(2){width:34%}th:nth-child(4){width:24%}
        dl{columns:2;column-gap:2rem;margin:.2rem 0}dl div{break-inside:avoid}dt{display:inline-block;min-width:6.5em;font-weight:600}dd{display:inline;margin:0}
        aside{border:2px solid #000;padding:.2rem .8rem;margin:.8rem 0;break-inside:avoid}ul{margin:.2rem 0;padding-left:1.2rem}tr{break-inside:avoid}
        @page{size:A4;margin:12mm}@media print{body{margin:0;padding:0;max-width:none;font-size:9pt;line-height:1.2}th,td{padding:.1rem .4rem}h2{margin:.6rem 0 .1rem}}
        """;

    /// <param name="warmup">The plan, made ready for the choir or for one part.</param>
    /// <param name="part">The part it is for, or null for the person at the piano.</param>
    internal static string Write(Warmup warmup, Part? part)
    {
        string title = TakeAlongTexts.Title(warmup) + (part is null ? "" : $", for {part.Name} at home");
        StringBuilder page = new();
        page.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        page.Append($"<title>{Text(title)}</title>\n<style>\n{Style}\n</style>\n</head>\n<body>\n<main>\n<h1>{Text(title)}</h1>\n<p>{Text(SheetTexts.Head(warmup, part))}</p>\n");
        page.Append(part is null ? "" : Care());
        page.Append($"<table>\n<caption>{SheetTexts.StepsCaption}</caption>\n<thead><tr>");
        page.AppendJoin("", SheetTexts.Columns.Select(column => $"<th scope=\"col\">{column}</th>"));
        page.Append("</tr></thead>\n<tbody>\n").AppendJoin("", warmup.Steps.Index().Select(step => Row(warmup, step.Index, step.Item, part)));
        return page.Append("</tbody>\n</table>\n").Append(Cues(warmup)).Append("</main>\n</body>\n</html>\n").ToString();
    }

    private static string Row(Warmup warmup, int index, WarmupStep step, Part? part)
    {
        string number = (index + 1).ToString(CultureInfo.InvariantCulture);
        string lines = string.Join("", SheetTexts.Lines(warmup, step, part).Select(line => $"<small>{Text(line)}</small>"));
        bool isLed = step.Planned > TimeSpan.Zero;
        string[] cells =
        [
            Text(isLed ? TakeAlongTexts.Tempos(step) : SheetTexts.None),
            Text(SheetTexts.Keys(step, warmup.Choir.Notes)),
            Text(part is null ? SheetTexts.WhoSings(step, warmup.Choir.Notes) : SheetTexts.Span(step, warmup.Choir.Notes)),
        ];
        return $"<tr><td class=\"number\">{number}</td><th scope=\"row\">{Text(step.Exercise.Title)}{lines}</th>"
            + string.Join("", cells.Select(cell => $"<td>{cell}</td>"))
            + $"<td class=\"number\">{ClockText.Of(step.Planned)}</td></tr>\n";
    }

    /// <summary>Every key of the plan once, from C upwards.</summary>
    private static string Cues(Warmup warmup)
    {
        Rung[] rungs =
        [
            .. warmup.Steps.SelectMany(step => step.Ladder.Rungs).DistinctBy(rung => (rung.Tonic.Name, SheetTexts.HasMajorThird(rung)))
                .OrderBy(rung => !SheetTexts.HasMajorThird(rung)).ThenBy(rung => rung.Tonic.Midi % 12),
        ];
        string chords = string.Join("", rungs.Select(rung => $"<div><dt>{Text(SheetTexts.Chord(rung, warmup.Choir.Notes))}</dt> <dd>{Text(SheetTexts.Cue(rung, warmup.Choir.Notes))}</dd></div>\n"));
        return rungs.Length == 0 ? "" : $"<h2>{SheetTexts.CuesTitle}</h2>\n<p>{SheetTexts.CuesAbout}</p>\n<dl>\n{chords}</dl>\n";
    }

    private static string Care() =>
        $"<aside aria-label=\"{TakeAlongTexts.CareTitle}\">\n<p><strong>{TakeAlongTexts.CareTitle}</strong></p>\n<ul>\n{string.Join("", TakeAlongTexts.Care.Select(line => $"<li>{Text(line)}</li>\n"))}</ul>\n</aside>\n";

    /// <summary>Safe to stand in a page, whatever a file says.</summary>
    private static string Text(string text) => WebUtility.HtmlEncode(Printable.Line(text));
}
