using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Repertoire.Drills;
using WarmupConsole.Music.Text;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Scores;

/// <summary>A drill as an exercise in the normal form, with its words.</summary>
internal static class DrillExercise
{
    private const int LongestId = 60;
    private const int LongestPiece = 40;

    /// <summary>The exercise, or what is wrong with the syllables.</summary>
    internal static (Exercise? Exercise, string Problem) Of(Drill drill, ChosenBars chosen, OpenedScore score, string? syllables)
    {
        Parsed<Pattern>? sung = syllables is null ? null : SyllableText.Apply(drill.Pattern, syllables);
        if (sung is { Ok: false })
        {
            return (null, string.Join("; ", sung.Errors.Select(error => error.Message)));
        }

        Pattern pattern = sung?.Value is { } given ? SpelledVowelData.Complete(given) : drill.Pattern;
        string bars = LookText.Bars(score.Score, chosen.From, chosen.To);
        string piece = score.Title.Length <= LongestPiece ? score.Title : score.Title[..LongestPiece].TrimEnd() + "…";
        Exercise exercise = new()
        {
            Id = IdOf($"{score.Title} {chosen.Look.Singer.Id}", bars),
            Title = Printable.Line(ScoreTexts.DrillTitle(piece, chosen.Look.Singer.Name, bars)),
            Stage = Stage.Sung,
            Tempo = new(drill.Slow, drill.Slow, drill.Tempo),
            LastTempo = drill.Tempo,
            Keys = drill.Keys,
            Mode = drill.Mode,
            Pattern = pattern,
            Dynamics = drill.Dynamics,
            Instruction = Printable.Line(ScoreTexts.DrillInstruction(piece, bars)),
            Listen = Printable.Line(ScoreTexts.DrillListen(chosen.Look.Between(chosen.From, chosen.To).Hardships.Select(hardship => hardship.Reason))),
            Caution = drill.Keys.ReachPercent > 0 ? ScoreTexts.DrillCaution : "",
            TalkSeconds = 60,
        };
        return (exercise with { Stage = StageProposal.For(exercise), Purposes = PurposeRules.Served(exercise) }, "");
    }

    /// <summary>Lower-case words and the bars, joined by hyphens; the bars are never cut off.</summary>
    private static string IdOf(string words, string bars)
    {
        string tail = "-bars-" + Slug(bars);
        string head = Slug(words);
        return (head.Length + tail.Length <= LongestId ? head : head[..(LongestId - tail.Length)].TrimEnd('-')) + tail;
    }

    private static string Slug(string text) => string.Join('-', new string([.. text.ToLowerInvariant().Where(c => c != '\'').Select(c => char.IsAsciiLetterOrDigit(c) ? c : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
