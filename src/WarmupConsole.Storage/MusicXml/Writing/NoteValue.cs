using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Storage.MusicXml.Writing;

/// <summary>A length as one written note: its value, its dots, and how many are sung in the time of how many.</summary>
/// <param name="Type">As MusicXML names it.</param>
/// <param name="Ticks">Of the value, without dots, when sung at its own length.</param>
/// <param name="Dots">0 to 2.</param>
/// <param name="Actual">So many notes ...</param>
/// <param name="Normal">... in the time of so many; 1 in 1 outside tuplets.</param>
internal readonly record struct NoteValue(string Type, long Ticks, int Dots, int Actual, int Normal)
{
    private static readonly (string Type, long Ticks)[] Types =
    [
        ("breve", 8 * Beats.TicksPerBeat), ("whole", 4 * Beats.TicksPerBeat), ("half", 2 * Beats.TicksPerBeat), ("quarter", Beats.TicksPerBeat),
        ("eighth", Beats.TicksPerBeat / 2), ("16th", Beats.TicksPerBeat / 4), ("32nd", Beats.TicksPerBeat / 8), ("64th", Beats.TicksPerBeat / 16),
    ];

    private static readonly (int Actual, int Normal)[] Groups = [(1, 1), (3, 2), (5, 4)];

    /// <summary>Every length that one note can be written as; of two ways the plainer one.</summary>
    private static readonly Dictionary<long, NoteValue> Values = All();

    /// <summary>
    /// A length as notes to be tied: one, where one will do, else the longest plain values in turn. What no value fits at the end has
    /// none and is written by its duration alone.
    /// </summary>
    internal static IEnumerable<(Beats Length, NoteValue? Value)> Of(Beats length)
    {
        while (!Values.ContainsKey(length.Ticks) && Types.FirstOrDefault(type => type.Ticks < length.Ticks) is { Ticks: > 0 } plain)
        {
            yield return (new(plain.Ticks), Values[plain.Ticks]);
            length = new(length.Ticks - plain.Ticks);
        }

        yield return (length, Values.TryGetValue(length.Ticks, out NoteValue value) ? value : null);
    }

    private static Dictionary<long, NoteValue> All()
    {
        Dictionary<long, NoteValue> values = [];
        foreach ((int actual, int normal) in Groups)
        {
            for (int dots = 0; dots <= 2; dots++)
            {
                foreach ((string type, long ticks) in Types)
                {
                    long dotted = ticks * ((2 << dots) - 1) * normal;
                    long parts = (1L << dots) * actual;
                    if (dotted % parts == 0)
                    {
                        values.TryAdd(dotted / parts, new(type, ticks, dots, actual, normal));
                    }
                }
            }
        }

        return values;
    }
}
