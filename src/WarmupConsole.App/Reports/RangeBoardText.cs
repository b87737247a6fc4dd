using System.Text;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Yaml;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.App.Reports;

/// <summary>
/// The range board as text: a column for each part, pitch upwards, two semitones to a row. On its left the range (light shade what the
/// part can sing at all, denser shade what it sings with ease), on its right the notes that the keys ask of it.
/// </summary>
internal static class RangeBoardText
{
    private const int SemitonesInRow = 2;
    private const int Half = 3;
    private const int Column = (2 * Half) + 2;

    internal static string Write(IReadOnlyList<PartCoverage> parts, NoteNaming notes)
    {
        BoardScale whole = BoardScale.For(parts.Select(part => part.Part), 1);
        int rows = ((whole.HighestMidi - whole.LowestMidi) / SemitonesInRow) + 1;
        BoardScale scale = new(whole.LowestMidi, whole.LowestMidi + (rows * SemitonesInRow) - 1, rows);
        StringBuilder text = new();
        for (int row = 0; row < scale.Rows; row++)
        {
            string axis = scale.CIn(row) is { } c && !(row > 0 && scale.CIn(row - 1) == c) ? notes.Write(new Pitch(Step.C, 0, (c / 12) - 1)) : "";
            Line(text, axis, parts.Select(part => Cells(scale, row, part)));
        }

        Line(text, "", parts.Select(part => CellText.Fit(Printable.Line(part.Part.Name), Column - 1)));
        return text.Append(AppTexts.BoardLegend).Append('\n').ToString();
    }

    private static string Cells(BoardScale scale, int row, PartCoverage part)
    {
        VoiceRange range = part.Part.Range;
        char shade = scale.Meets(row, range.Comfortable) ? '▒' : scale.Meets(row, range.Extreme) ? '░' : ' ';
        char sung = part.Reached is { } reached && scale.Meets(row, reached) ? '█' : ' ';
        return new string(shade, Half) + new string(sung, Half);
    }

    private static void Line(StringBuilder text, string axis, IEnumerable<string> columns) =>
        text.Append($"{axis,-3} {string.Concat(columns.Select(column => column.PadRight(Column)))}".TrimEnd()).Append('\n');
}
