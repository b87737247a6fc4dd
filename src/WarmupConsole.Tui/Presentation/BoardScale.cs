using WarmupConsole.Music.Voices;

namespace WarmupConsole.Tui.Presentation;

/// <summary>Which semitones each row of the range board stands for; row 0 is the highest.</summary>
public readonly record struct BoardScale(int LowestMidi, int HighestMidi, int Rows)
{
    /// <summary>From the lowest to the highest extreme of the choir, with a semitone to spare.</summary>
    public static BoardScale For(IEnumerable<Part> parts, int rows)
    {
        Part[] all = [.. parts];
        return new(all.Min(part => part.Range.Extreme.Low.Midi) - 1, all.Max(part => part.Range.Extreme.High.Midi) + 1, rows);
    }

    private int Semitones => HighestMidi - LowestMidi + 1;

    /// <summary>The lowest semitone of a row; rows may stand for several semitones, or several rows for one.</summary>
    public int Low(int row) => LowestMidi + ((Rows - 1 - row) * Semitones / Rows);

    public int High(int row) => Math.Max(Low(row), LowestMidi + ((Rows - row) * Semitones / Rows) - 1);

    /// <summary>True when the row shows some of the range.</summary>
    public bool Meets(int row, PitchRange range) => range.Low.Midi <= High(row) && Low(row) <= range.High.Midi;

    /// <summary>The row of a pitch, kept on the board.</summary>
    public int RowOf(int midi)
    {
        int row = Rows - 1;
        while (row > 0 && midi > High(row))
        {
            row--;
        }

        return row;
    }

    /// <summary>The C in a row, or null.</summary>
    public int? CIn(int row)
    {
        int c = (High(row) / 12) * 12;
        return c >= Low(row) ? c : null;
    }
}
