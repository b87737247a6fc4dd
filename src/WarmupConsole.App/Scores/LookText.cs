using System.Text;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Repertoire;
using WarmupConsole.Music.Repertoire.Places;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Scores;

/// <summary>The hard places of a score for a director to read.</summary>
internal sealed class LookText(OpenedScore score, ScoreLook look, LookSources sources, bool showsAll = false)
{
    private const int Shown = 5;

    private NoteNaming Notes => score.Folder.Choir.Notes;

    /// <summary>Picture, then part by part its range, tessitura and hardest passages.</summary>
    internal string Write()
    {
        StringBuilder text = new();
        foreach (string line in Head())
        {
            text.Append(Printable.Line(line)).Append('\n');
        }

        text.Append('\n').Append(ScorePicture.Write(score.Score, look));
        foreach (LineLook line in look.Lines)
        {
            text.Append('\n');
            text.AppendJoin('\n', Facts(line).Append(Passages(line)).Where(row => row.Length > 0).Select(Printed)).Append('\n');
        }

        return text.ToString();

        static string Printed(string rows) => string.Join('\n', rows.Split('\n').Select(Printable.Line));
    }

    /// <summary>Title, bars, and what the measure rests on.</summary>
    internal IEnumerable<string> Head() =>
    [
        ScoreTexts.LookHead(score.Title, score.Score.Bars.Count, look.Clock.Order.Count, sources.AsPlayed),
        score.MapPath is { } path ? ScoreTexts.Confirmed(path) : ScoreTexts.Guessed(score.Path),
        .. score.Map.Lines.Where(line => line.Singer is null).Select(line => line.Line.Title) is var left && left.Any() ? [ScoreTexts.NotSung(left)] : (string[])[],
        look.Clock.HasTempo ? ScoreTexts.TempoOfScore : ScoreTexts.NoTempo(ScoreClock.UsualBeatsPerMinute),
        sources.VowelSentence,
        sources.WeakSentence,
        .. look.Lines.Count == 0 ? [ScoreTexts.NothingSung] : (string[])[],
    ];

    /// <summary>Name and singer; lowest and highest; tessitura; time beyond.</summary>
    internal IEnumerable<string> Facts(LineLook line)
    {
        yield return ScoreTexts.LineHead(line.Line.Title, line.Singer.Name, line.Singer.Range.Comfortable.In(Notes));
        if (line.Range is not { } range)
        {
            yield return ScoreTexts.NoNotes;
            yield break;
        }

        yield return ScoreTexts.Ends(Note(line, range.Lowest), Note(line, range.Highest), range.Count);
        if (line.Tessitura is { IsEmpty: false } tessitura)
        {
            yield return ScoreTexts.Quartiles(Notes.Write(tessitura.At(0.25)!.Value), Notes.Write(tessitura.At(0.5)!.Value), Notes.Write(tessitura.At(0.75)!.Value));
        }

        yield return ScoreTexts.Beyond(line.Time);
    }

    /// <summary>Bars, points, reasons.</summary>
    internal string Passage(Passage passage) => ScoreTexts.Passage(Bars(score.Score, passage.From, passage.To), passage.Score, passage.Hardships.Select(Reason));

    internal static string Bars(Score score, int from, int to) => from == to ? score.Bars[from].Number : $"{score.Bars[from].Number}-{score.Bars[to].Number}";

    private string Note(LineLook line, PartNote note) => $"{Notes.Write(note.Pitch)} ({ScoreTexts.InBar(line.Line.Part.BarNumbers[note.Bar])})";

    private string Passages(LineLook line)
    {
        int shown = showsAll ? line.Passages.Count : Shown;
        IEnumerable<string> rows = line.Passages.Take(shown).Select((passage, index) => ScoreTexts.Numbered(index + 1, Passage(passage)));
        int more = line.Passages.Count - shown;
        return line.Passages.Count == 0 ? ScoreTexts.NoPassages : string.Join('\n', more > 0 ? rows.Append(ScoreTexts.MorePassages(more)) : rows);
    }

    private string Reason(Hardship hardship) => ScoreTexts.Reason(hardship, Notes.Write(hardship.Pitch));
}
