using WarmupConsole.Music.Repertoire;

namespace WarmupConsole.Storage.MusicXml;

/// <summary>One part while it is read: what lasts from bar to bar, and what was gathered so far.</summary>
internal sealed class PartState(string id, string name)
{
    private readonly Dictionary<int, Transposition> transpositions = [];
    private readonly SortedDictionary<int, string> clefs = [];
    private Transposition ofAllStaves;

    internal string Id => id;

    /// <summary>As messages call it.</summary>
    internal string Title => name.Length > 0 ? name : id.Length > 0 ? id : "a part without a name";

    internal BarClock Clock { get; } = new();

    internal List<PartNote> Notes { get; } = [];

    internal List<string> BarNumbers { get; } = [];

    internal List<KeyChange> Keys { get; } = [];

    /// <summary>Bars that are shorter than their time signature, to be judged when all are known.</summary>
    internal List<ShortBar> ShortBars { get; } = [];

    internal int CueNotes { get; set; }

    internal int UnpitchedNotes { get; set; }

    internal int? Loudness { get; set; }

    /// <summary>Quarter notes of a bar as the time signature says; 0 without one.</summary>
    internal double NominalQuarters { get; set; }

    /// <summary>The ending that the bars belong to, from its beginning to its end.</summary>
    internal IReadOnlyList<int> Endings { get; set; } = [];

    internal bool ToldOfMicrotones { get; set; }

    internal bool ToldOfBars { get; set; }

    internal int Bar => BarNumbers.Count - 1;

    internal string Place => MusicXmlTexts.At(Title, BarNumbers.Count == 0 ? "?" : BarNumbers[^1]);

    internal Transposition TranspositionOf(int staff) => transpositions.GetValueOrDefault(staff, ofAllStaves);

    /// <param name="staff">Null for all staves.</param>
    /// <param name="transposition">What holds from here on.</param>
    internal void Transpose(int? staff, Transposition transposition)
    {
        if (staff is { } number)
        {
            transpositions[number] = transposition;
        }
        else
        {
            transpositions.Clear();
            ofAllStaves = transposition;
        }
    }

    internal void AddClef(int staff, string clef) => clefs.TryAdd(staff, clef);

    internal ScorePart ToPart() => new(id, name, Notes, BarNumbers, Keys, [.. clefs.Values], CueNotes, UnpitchedNotes);

    /// <param name="Bar">Index of the bar.</param>
    /// <param name="Quarters">How long it is.</param>
    /// <param name="Nominal">How long it should be.</param>
    /// <param name="Line">Where it stands.</param>
    /// <param name="Column">Where it stands.</param>
    internal readonly record struct ShortBar(int Bar, double Quarters, double Nominal, int Line, int Column);
}
