using WarmupConsole.Music.Repertoire;
using WarmupConsole.Music.Repertoire.Places;

namespace WarmupConsole.App.Scores;

/// <summary>Some bars of a line, as a director names them.</summary>
/// <param name="Look">The line.</param>
/// <param name="From">Index of the first bar.</param>
/// <param name="To">Index of the last bar.</param>
internal sealed record ChosenBars(LineLook Look, int From, int To)
{
    /// <summary>Finds the line that a part of the choir sings, or the one of that name in the score; or says why not.</summary>
    internal static (LineLook? Look, string Problem) Line(ScoreLook look, string text)
    {
        LineLook[] named = [.. look.Lines.Where(line => Is(line.Line.Title, text) || Is(line.Line.Key, text))];
        LineLook[] sung = [.. look.Lines.Where(line => MapChange.Part([line.Singer], text) is not null)];
        LineLook[] found = named.Length == 1 && (sung.Length != 1 || !Is(sung[0].Singer.Id, text)) ? named : sung;
        return found.Length switch
        {
            1 => (found[0], ""),
            0 => (null, ScoreTexts.NoLine(text, look.Lines.Select(line => line.Line.Title))),
            _ => (null, ScoreTexts.SeveralLines(text, found.Select(line => line.Line.Title))),
        };
    }

    /// <summary>"45", "45-47" or "X1-3" by printed numbers: the first bars that are called so.</summary>
    internal static (int From, int To)? Bars(Score score, string text)
    {
        string typed = text.Trim();
        if (Find(score, typed, 0) is { } single)
        {
            return (single, single);
        }

        for (int at = 1; at < typed.Length; at++)
        {
            if (typed[at] is '-' or '–' && Find(score, typed[..at].Trim(), 0) is { } from && Find(score, typed[(at + 1)..].Trim(), from) is { } to)
            {
                return (from, to);
            }
        }

        return null;
    }

    /// <summary>The bars named by one of two options; or why not.</summary>
    internal static (ChosenBars? Bars, string Problem) Of(OpenedScore score, ScoreLook look, string part, (int? Passage, string? Bars) place)
    {
        (LineLook? line, string problem) = Line(look, part);
        if (line is null)
        {
            return (null, problem);
        }

        if (place.Passage is { } number)
        {
            return number >= 1 && number <= line.Passages.Count
                ? (new(line, line.Passages[number - 1].From, line.Passages[number - 1].To), "")
                : (null, ScoreTexts.NoPassage(number, line.Passages.Count));
        }

        return Bars(score.Score, place.Bars ?? "") is { } bars
            ? (new(line, bars.From, bars.To), "")
            : (null, ScoreTexts.NoBars(place.Bars ?? "", score.Score.Bars[0].Number, score.Score.Bars[^1].Number));
    }

    private static int? Find(Score score, string number, int from)
    {
        for (int bar = from; bar < score.Bars.Count; bar++)
        {
            if (Is(score.Bars[bar].Number, number))
            {
                return bar;
            }
        }

        return null;
    }

    private static bool Is(string name, string text) => string.Equals(name, text, StringComparison.OrdinalIgnoreCase);
}
