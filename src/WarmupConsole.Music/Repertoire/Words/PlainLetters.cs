namespace WarmupConsole.Music.Repertoire.Words;

/// <summary>Letters without their accents, as names and words of scores are compared. (The program carries no tables of Unicode for that.)</summary>
internal static class PlainLetters
{
    private const string Accented = "àáâãåāăèéêëēĕėęìíîïīĭòóôõōŏőùúûūŭůűýÿçćčñńňšśžźżłďťř";
    private const string Plain = "aaaaaaaeeeeeeeeiiiiiiooooooouuuuuuuyycccnnnsszzzldtr";
    private const string Umlauts = "äöü";
    private const string WithoutUmlaut = "aou";

    /// <summary>A small letter without its accent; ä, ö and ü are letters of their own.</summary>
    internal static char Of(char c)
    {
        char small = char.ToLowerInvariant(c);
        int at = Accented.IndexOf(small, StringComparison.Ordinal);
        return at < 0 ? small : Plain[at];
    }

    /// <summary>The same, with a, o and u for ä, ö and ü.</summary>
    internal static char Bare(char c)
    {
        char plain = Of(c);
        int at = Umlauts.IndexOf(plain, StringComparison.Ordinal);
        return at < 0 ? plain : WithoutUmlaut[at];
    }
}
