using System.Globalization;
using System.Text;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Choirs;

/// <summary>Writes a choir so that it reads back as the same, with all ranges that its parts ever had.</summary>
internal static class ChoirWriter
{
    internal static string Write(Choir choir)
    {
        StringBuilder text = new("format: 1\n");
        Line(text, "", "name", YamlLine.Quote(choir.Name));
        Line(text, "", "town", choir.Town.Length == 0 ? null : YamlLine.Quote(choir.Town));
        Line(text, "", "demo", choir.Demo ? "true" : null);
        Line(text, "", "rehearsal", Number(choir.RehearsalMinutes));
        Line(text, "", "notes", choir.Notes == NoteNaming.Scientific ? null : choir.Notes.Id);
        text.Append("parts:\n");
        foreach (Part part in choir.Parts)
        {
            WritePart(text, part);
        }

        WriteList(text, "concerts", choir.Concerts.Select(concert => $"{{date: {DayText.Write(concert.Date)}, title: {YamlLine.Quote(concert.Title)}}}"));
        WriteList(text, "marks", choir.OwnMarkKinds.Select(Mark));
        return text.ToString();
    }

    private static void WritePart(StringBuilder text, Part part)
    {
        Line(text, "  - ", "id", YamlLine.Quote(part.Id));
        Line(text, "    ", "name", YamlLine.Quote(part.Name));
        Line(text, "    ", "letters", part.Letters.Count == 0 ? null : YamlLine.List(part.Letters));
        Line(text, "    ", "groups", part.Groups.Count == 0 ? null : YamlLine.List(part.Groups));
        Line(text, "    ", "singers", part.Singers == 0 ? null : Number(part.Singers));
        Line(text, "    ", "placement", part.PlacementOctaves == 0 ? null : Number(part.PlacementOctaves));
        WriteRanges(text, part.History.Count == 0 ? [new(null, part.Range, IsStart: false)] : part.History);
    }

    private static void WriteRanges(StringBuilder text, IReadOnlyList<RangeEntry> history)
    {
        foreach (RangeEntry plain in history.Where(entry => entry.From is null))
        {
            Line(text, "    ", "extreme", PitchRangeText.Write(plain.Range.Extreme));
            Line(text, "    ", "comfortable", PitchRangeText.Write(plain.Range.Comfortable));
            Line(text, "    ", "start", plain.IsStart ? "true" : null);
        }

        RangeEntry[] dated = [.. history.Where(entry => entry.From is not null)];
        text.Append(dated.Length == 0 ? "" : "    ranges:\n").AppendJoin("", dated.Select(entry => $"      - {Dated(entry)}\n"));
    }

    private static string Dated(RangeEntry entry) =>
        $"{{from: {DayText.Write(entry.From!.Value)}, extreme: {PitchRangeText.Write(entry.Range.Extreme)}, comfortable: {PitchRangeText.Write(entry.Range.Comfortable)}}}";

    private static void WriteList(StringBuilder text, string name, IEnumerable<string> rows)
    {
        string lines = string.Concat(rows.Select(row => $"  - {row}\n"));
        text.Append(lines.Length == 0 ? "" : $"{name}:\n{lines}");
    }

    private static string Mark(MarkKind kind) =>
        $"{{id: {kind.Id}, words: {YamlLine.Quote(kind.Words)}, spellings: {YamlLine.List(kind.Spellings)}, praise: {(kind.IsPraise ? "true" : "false")}{(kind.IsEffort ? ", effort: true" : "")}}}";

    private static void Line(StringBuilder text, string indent, string name, string? value)
    {
        if (value is not null)
        {
            text.Append(indent).Append(name).Append(": ").Append(value).Append('\n');
        }
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
