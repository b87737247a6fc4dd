namespace WarmupConsole.Music.Pitches;

/// <summary>
/// What a note is called in each language, by letter and alteration; the first spelling is the one written. Names and suffixes as in
/// the note-name tables of the LilyPond manual (English, Deutsch, Nederlands, Italiano, Español); no spelling means two notes of one language.
/// </summary>
internal static class NoteNameData
{
    private static readonly string[] Letters = ["C", "D", "E", "F", "G", "A", "B"];

    // Ré with its accent is French; the others spell these alike.
    private static readonly string[][] Solmization = [["Do"], ["Re", "Ré"], ["Mi"], ["Fa"], ["Sol"], ["La"], ["Si"]];

    /// <summary>♭ or b, ♯ or #.</summary>
    internal static IEnumerable<string> English(Step step, int alteration) => WithSigns(Letters[(int)step], alteration, "♯#");

    /// <summary>♭ or b, ♯ or #, d (Italian, French diesis), s (Spanish sostenido).</summary>
    internal static IEnumerable<string> FixedDo(Step step, int alteration) =>
        Solmization[(int)step].SelectMany(name => WithSigns(name, alteration, "♯#ds"));

    /// <summary>H and B; Es, not Ees; As, not Aes; Heses; Asas or Ases.</summary>
    internal static IEnumerable<string> German(Step step, int alteration) => (step, alteration) switch
    {
        (Step.B, -1) => ["B"],
        (Step.B, _) => ["H" + Suffixes(alteration)],
        (Step.E, < 0) => ["Es" + Suffixes(alteration + 1)],
        (Step.A, < 0) => ["As" + Repeated("as", -1 - alteration), "As" + Suffixes(alteration + 1)],
        _ => [Letters[(int)step] + Suffixes(alteration)],
    };

    /// <summary>B and Bes; Es or Ees, As or Aes.</summary>
    internal static IEnumerable<string> Dutch(Step step, int alteration) => (step, alteration) switch
    {
        (Step.E or Step.A, < 0) => [Letters[(int)step] + "s" + Suffixes(alteration + 1), Letters[(int)step] + Suffixes(alteration)],
        _ => [Letters[(int)step] + Suffixes(alteration)],
    };

    private static IEnumerable<string> WithSigns(string natural, int alteration, string sharps) =>
        (alteration < 0 ? "♭b" : sharps).Select(sign => natural + new string(sign, Math.Abs(alteration)));

    private static string Suffixes(int alteration) => Repeated(alteration < 0 ? "es" : "is", Math.Abs(alteration));

    private static string Repeated(string suffix, int times) => string.Concat(Enumerable.Repeat(suffix, times));
}
