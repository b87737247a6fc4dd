namespace WarmupConsole.Sessions.Marks;

/// <summary>Places in a pattern: one row for each, with all that may be typed for it.</summary>
internal static class PlaceData
{
    private static readonly (string Place, string[] Spellings)[] Rows =
    [
        ("top", ["top", "at the top", "on top", "on the top", "top note", "on the top note"]),
        ("bottom", ["bottom", "at the bottom", "on the bottom", "bottom note"]),
        ("coming down", ["coming down", "going down", "down", "on the way down", "descending", "way down"]),
        ("going up", ["going up", "coming up", "up", "on the way up", "ascending", "way up"]),
        ("on the leap", ["on the leap", "leap", "at the leap", "leaps", "on the jump", "jump"]),
        ("start", ["start", "at the start", "beginning", "at the beginning", "onset", "first note", "on the first note"]),
        ("end", ["end", "at the end", "ending", "last note", "on the last note"]),
        ("degree 1", ["tonic", "root", "do", "first"]),
        ("degree 2", ["second", "re"]),
        ("degree 3", ["third", "mi"]),
        ("degree 4", ["fourth", "fa"]),
        ("degree 5", ["fifth", "so", "sol"]),
        ("degree 6", ["sixth", "la"]),
        ("degree 7", ["seventh", "ti"]),
        ("degree 8", ["octave", "eighth"]),
    ];

    internal static PhraseBook<string> Book { get; } = MakeBook();

    /// <summary>How a sentence says it: "at the top", "on degree 5", "coming down"; other words stand in quotation marks.</summary>
    internal static string InSentence(string place) => place switch
    {
        "top" or "bottom" or "start" or "end" => "at the " + place,
        "coming down" or "going up" or "on the leap" => place,
        _ when place.StartsWith("degree ", StringComparison.Ordinal) => "on " + place,
        _ when place.StartsWith("on ", StringComparison.Ordinal) => place,
        _ => $"\"{place}\"",
    };

    private static PhraseBook<string> MakeBook()
    {
        PhraseBook<string> book = new();
        foreach ((string place, string[] spellings) in Rows)
        {
            foreach (string spelling in spellings)
            {
                book.Add(spelling, place);
                book.Add("on " + spelling, place);
                book.Add("on the " + spelling, place);
            }
        }

        return book;
    }
}
