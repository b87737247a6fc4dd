using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Sessions.Marks;

/// <summary>Places in a pattern: one row for each, with all that may be typed for it.</summary>
internal static class PlaceData
{
    /// <summary>What may stand before any of them, "at top" and "near the top" being the same.</summary>
    private static readonly string[] Before = ["", "the", "on", "on the", "at", "at the", "at the very", "in the", "by the", "near the", "towards the", "toward the", "from the"];

    private static readonly (string Place, string[] Spellings)[] Rows =
    [
        ("top", ["top", "top note", "top notes", "highest note", "very top"]),
        ("bottom", ["bottom", "bottom note", "bottom notes", "lowest note", "very bottom"]),
        ("middle", ["middle"]),
        ("coming down", ["coming down", "going down", "down", "way down", "descending", "descent"]),
        ("going up", ["going up", "coming up", "up", "way up", "ascending", "ascent"]),
        ("on the leap", ["leap", "leaps", "jump", "jumps"]),
        ("start", ["start", "beginning", "onset", "first note", "entry", "entries", "entrance"]),
        ("end", ["end", "ending", "last note", "very end"]),
        ("degree 1", ["tonic", "root", "do", "first"]),
        ("degree 2", ["second", "re"]),
        ("degree 3", ["third", "mi"]),
        ("degree 4", ["fourth", "fa"]),
        ("degree 5", ["fifth", "so", "sol"]),
        ("degree 6", ["sixth", "la"]),
        ("degree 7", ["seventh", "ti"]),
        ("degree 8", ["octave", "eighth"]),
    ];

    /// <summary>Before the name of a note without an octave.</summary>
    internal const string On = "on ";

    internal static PhraseBook<string> Book { get; } = MakeBook();

    /// <summary>How a sentence says it: "at the top", "on degree 5", "coming down"; other words stand in quotation marks.</summary>
    internal static string InSentence(string place, NoteNaming notes) => place switch
    {
        "top" or "bottom" or "start" or "end" => "at the " + place,
        "middle" => "in the middle",
        "coming down" or "going up" or "on the leap" => place,
        _ when place.StartsWith("degree ", StringComparison.Ordinal) => "on " + place,
        _ when place.StartsWith(On, StringComparison.Ordinal) => Pitch.TryParse(place[On.Length..] + "4", out Pitch pitch) ? On + notes.WriteName(pitch) : place,
        _ => $"\"{place}\"",
    };

    private static PhraseBook<string> MakeBook()
    {
        PhraseBook<string> book = new();
        foreach ((string place, string[] spellings) in Rows)
        {
            foreach (string spelling in spellings)
            {
                Array.ForEach(Before, before => book.Add($"{before} {spelling}", place));
            }
        }

        return book;
    }
}
