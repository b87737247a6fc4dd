using WarmupConsole.Music.Repertoire;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Storage.MusicXml;

/// <summary>What all parts say together about the bars: numbers, lengths, leaps, tempos.</summary>
internal sealed class BarTable
{
    private readonly List<Row> rows = [];
    private readonly Dictionary<(int Bar, long Ticks), Tempo> tempos = [];

    /// <summary>The number as it is kept: parts share the text of their common numbers.</summary>
    internal string Name(int bar, string number)
    {
        if (bar == rows.Count)
        {
            rows.Add(new(number));
        }

        return rows[bar].Number == number ? rows[bar].Number : number;
    }

    /// <param name="bar">Index of the bar.</param>
    /// <param name="ticks">How far a part fills it.</param>
    /// <param name="nominalTicks">What the time signature says; 0 without one.</param>
    internal void Fill(int bar, long ticks, long nominalTicks)
    {
        rows[bar].Ticks = Math.Max(rows[bar].Ticks, ticks);
        rows[bar].NominalTicks = Math.Max(rows[bar].NominalTicks, nominalTicks);
    }

    internal void Jump(int bar, Func<BarJumps, BarJumps> change) => rows[bar].Jumps = change(rows[bar].Jumps ?? new());

    /// <summary>A tempo in quarter notes a minute; one that no music has is passed over.</summary>
    internal void AddTempo(int bar, long ticks, double quartersPerMinute)
    {
        if (quartersPerMinute is > 0 and < 10_000)
        {
            tempos[(bar, ticks)] = Tempo.Clamp((int)Math.Round(quartersPerMinute * 1000));
        }
    }

    internal IReadOnlyList<ScoreBar> Bars()
    {
        List<ScoreBar> bars = new(rows.Count);
        Beats start = Beats.Zero;
        foreach (Row row in rows)
        {
            Beats length = new(row.Ticks > 0 ? row.Ticks : row.NominalTicks);
            bars.Add(new(row.Number, start, length, row.Jumps));
            start += length;
        }

        return bars;
    }

    internal IReadOnlyList<TempoChange> Tempos() =>
        [.. tempos.OrderBy(tempo => tempo.Key).Select(tempo => new TempoChange(tempo.Key.Bar, new(tempo.Key.Ticks), tempo.Value))];

    private sealed class Row(string number)
    {
        internal string Number { get; } = number;

        internal long Ticks { get; set; }

        internal long NominalTicks { get; set; }

        internal BarJumps? Jumps { get; set; }
    }
}
