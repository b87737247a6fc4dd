using WarmupConsole.Music.Ladders;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Tui.Presentation;

/// <summary>The marks of this session on the range board: the first letter of what was heard, at its pitch, in the column of its part.</summary>
internal static class BoardMarks
{
    private const string FreeNote = "*";
    private const string Pin = "!";

    internal static void Draw(Pane column, BoardScale scale, ScreenModel model, RungPart part)
    {
        Dictionary<int, int> used = [];
        foreach (LiveMark mark in model.Session.Marks.Where(mark => Concerns(mark.Content, part)))
        {
            if (Midi(mark, part) is { } midi)
            {
                int row = scale.RowOf(midi);
                int place = used.GetValueOrDefault(row);
                used[row] = place + 1;
                column.Write(Math.Min(place, column.Width - 1), row, mark.IsPin ? Pin : Letter(mark.Content), Ink.Mark);
            }
        }
    }

    private static bool Concerns(MarkContent content, RungPart part) => content.PartIds.Count == 0 || content.PartIds.Contains(part.Part.Id);

    private static string Letter(MarkContent content) => content.KindId is { Length: > 0 } kind ? kind[..1] : FreeNote;

    /// <summary>The pitch named; else the tonic of its key, in the octave of the part.</summary>
    private static int? Midi(LiveMark mark, RungPart part)
    {
        if (mark.Content.Pitch is { } pitch)
        {
            return pitch.Midi;
        }

        if (mark.Anchor.Tonic is not { } anchor)
        {
            return null;
        }

        int tonic = mark.Content.Key is { } key ? Nearest(key.Midi, anchor.Midi) : anchor.Midi;
        return tonic + (12 * part.Octaves);
    }

    /// <summary>The octave of a key that lies nearest to a pitch.</summary>
    private static int Nearest(int midi, int target) => midi + (12 * (int)Math.Round((target - midi) / 12.0));
}
