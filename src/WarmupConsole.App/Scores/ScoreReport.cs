using System.Text.Json;
using WarmupConsole.App.Reports;
using WarmupConsole.Music.Repertoire;
using WarmupConsole.Music.Repertoire.Mapping;
using WarmupConsole.Music.Repertoire.Places;

namespace WarmupConsole.App.Scores;

/// <summary>
/// What <c>warmup score look --json</c> prints. A part that several voices sing from stands there as a whole (voice null) and voice by
/// voice. Notes are counted as they stand: chord members, grace notes and tied continuations each, nothing repeated.
/// </summary>
internal sealed record ScoreReport(IReadOnlyList<ScoreReport.ScoreRow> Parts)
{
    private const int Decimals = 1;

    internal static ScoreReport From(ScoreLook look) => new([.. look.Lines.GroupBy(line => line.Line.Key).SelectMany(lines => Rows(look, [.. lines]))]);

    internal string ToJson() => JsonSerializer.Serialize(this, ReportJson.Default.ScoreReport);

    private static IEnumerable<ScoreRow> Rows(ScoreLook look, LineLook[] lines)
    {
        if (lines is [{ Line.Voice: "" } whole])
        {
            return [Of(whole), .. look.VoicesOf(whole).Select(Of)];
        }

        // The voices belong to parts of their own, which carry the passages; together they are only counted.
        ScoreLine first = lines[0].Line;
        return [Of(first with { Voice = "" }, NoteRange.Of(first.Part.Notes), []), .. lines.Where(line => line.Line.Voice.Length > 0).Select(Of)];
    }

    private static ScoreRow Of(LineLook line) => Of(line.Line, line.Range, [.. line.Passages.Select(passage => Of(line.Line.Part, passage))]);

    private static ScoreRow Of(ScoreLine line, NoteRange? range, IReadOnlyList<Place> passages) =>
        new(line.Name, line.Voice.Length == 0 ? null : line.Voice, Of(line.Part, range?.Lowest), Of(line.Part, range?.Highest), range?.Count ?? 0, passages);

    private static Note? Of(ScorePart part, PartNote? note) => note is { } known ? new(known.Midi, known.Pitch.ToAscii(), part.BarNumbers[known.Bar]) : null;

    private static Place Of(ScorePart part, Passage passage) => new(
        part.BarNumbers[passage.From],
        part.BarNumbers[passage.To],
        [.. passage.Hardships.Select(hardship => HardReasonData.Words(hardship.Reason))],
        Math.Round(passage.Score, Decimals));

    /// <summary>One part or voice; without notes its ends are null.</summary>
    internal sealed record ScoreRow(string Part, string? Voice, Note? Lowest, Note? Highest, int Notes, IReadOnlyList<Place> Passages);

    /// <summary>A sounding pitch and the printed number of its bar.</summary>
    internal sealed record Note(int Midi, string Name, string Bar);

    /// <summary>Printed bar numbers, why it is hard, and the points of it all.</summary>
    internal sealed record Place(string FromBar, string ToBar, IReadOnlyList<string> Reasons, double Score);
}
