namespace WarmupConsole.Sessions.Marks;

/// <summary>How much of it a mark says: one row for each strength, from weak to strong, with all that may be typed for it.</summary>
public static class StrengthData
{
    private static readonly (string Strength, string[] Spellings)[] Rows =
    [
        ("slightly", ["slightly", "a bit", "bit", "a little", "little", "a little bit", "a touch", "a tad", "a shade", "somewhat", "a bit too", "a little too"]),
        ("rather", ["rather", "quite", "fairly", "pretty", "too"]),
        ("very", ["very", "very very", "really", "badly", "terribly", "extremely", "a lot", "very much", "much too", "far too", "way too"]),
    ];

    /// <summary>All strengths, from weak to strong, as logs keep them and sentences show them.</summary>
    public static IReadOnlyList<string> Words { get; } = [.. Rows.Select(row => row.Strength)];

    internal static PhraseBook<string> Book { get; } = MakeBook();

    /// <summary>Where a strength stands from weak to strong; a mark that says none stands between slightly and rather, and so does any other text.</summary>
    internal static double Order(string strength) => Array.FindIndex(Rows, row => row.Strength == strength) is >= 0 and int row ? row : 0.5;

    private static PhraseBook<string> MakeBook()
    {
        PhraseBook<string> book = new();
        foreach ((string strength, string[] spellings) in Rows)
        {
            foreach (string spelling in spellings)
            {
                book.Add(spelling, strength);
            }
        }

        return book;
    }
}
