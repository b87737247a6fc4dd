using WarmupConsole.Music.Repertoire.Mapping;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Repertoire.Places;

/// <summary>What a line asks of the part that sings it.</summary>
/// <param name="Line">The line.</param>
/// <param name="Singer">The part.</param>
/// <param name="Range">Lowest, highest and number of its notes; null when it has none.</param>
/// <param name="Tessitura">Where it lies.</param>
/// <param name="Time">How long it is sung, and where.</param>
/// <param name="Hardships">All that is hard, in no order.</param>
/// <param name="BarPoints">Points of each bar, by index.</param>
/// <param name="Passages">The hardest first.</param>
public sealed record LineLook(
    ScoreLine Line,
    Part Singer,
    NoteRange? Range,
    Tessitura Tessitura,
    RangeTime Time,
    IReadOnlyList<Hardship> Hardships,
    IReadOnlyList<double> BarPoints,
    IReadOnlyList<Passage> Passages)
{
    /// <summary>What is hard from one bar to another, by index.</summary>
    public Passage Between(int from, int to) => Passage.Of(Hardships, from, to);
}
