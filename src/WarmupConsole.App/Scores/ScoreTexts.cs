using System.Globalization;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Repertoire.Drills;
using WarmupConsole.Music.Repertoire.Places;

namespace WarmupConsole.App.Scores;

/// <summary>What the commands about scores say.</summary>
internal static class ScoreTexts
{
    internal const string About = "Scores: who sings what, where it is hard for this choir, what to work on, and drills out of its bars.";
    internal const string FileAbout = "The score: MusicXML, as .musicxml, .xml or .mxl; or the name of one in the choir's scores folder.";
    internal const string MapAbout = "Say which part of the choir sings which part of the score: guessed, then confirmed once and kept in scores/NAME.yaml.";
    internal const string MapYesAbout = "Ask nothing: keep what is guessed, and what --part says.";
    internal const string MapPartAbout = "Who sings a part of the score: \"Canto=soprano\"; \"Piano=none\" leaves it out; \"Women, voice 2=alto\" names one voice. May stand more than once.";
    internal const string MapConfirm = "Enter keeps this; or type what is wrong, such as 'Canto=soprano' or 'Piano=none'; q leaves it: ";
    internal const string MapNeedsYes = "Nothing was written: to keep this, say --yes, with --part for what is wrong.";
    internal const string MapIsThere = "it was confirmed before and is not overwritten; change it there, or move it away to be asked anew";
    internal const string NotKept = "Nothing was written.";

    internal static string MapHead(string title) => $"{title}:";

    internal static string MapRow(string line, string singer, string ground) => $"  {line}  {singer}  {ground}";

    internal const string LeftOut = "–";
    internal const string ByName = "by its name";
    internal const string ByTessitura = "guessed from clef and tessitura";
    internal const string IsAccompaniment = "left out: accompaniment";
    internal const string AsSaid = "as you said";

    internal static string NoEquals(string text) => $"'{text}' is no 'score part=choir part': write for example Canto=soprano";

    internal static string NoLine(string text, IEnumerable<string> lines) => $"the score has no part '{text}'; write one of {string.Join("; ", lines)}";

    internal static string NoSinger(string text, IEnumerable<string> ids) => $"there is no part '{text}' in this choir; write one of {string.Join(", ", ids)}, none";

    internal static string Kept(string path) => $"Kept in {path}. Change it there.";

    internal const string LookAbout = "Where a score is hard for this choir: part by part its range, its tessitura, and the hardest passages with reasons.";
    internal const string LookHtmlAbout = "Write it as one page with the picture (a new file), for the browser or for paper.";
    internal const string PlayedAbout = "Count repeats, endings and leaps back as often as they are sung.";
    internal const string LanguageAbout = "Language of the words, for what is said about vowels: la, it or de. Default: what the score or its mapping file names.";
    internal const string LookAllAbout = "List every passage, not only the five hardest of each part.";
    internal const string TempoOfScore = "Times by the tempos of the score.";
    internal const string NoLanguage = "The score does not name the language of its words, so no vowel was judged: say --language la, it or de.";
    internal const string NoWeakPitches = "No weak pitch is known from the logs.";
    internal const string NothingSung = "No line of it is sung by this choir: see scores/ or warmup score map.";
    internal const string NoNotes = "  no notes with a pitch";
    internal const string NoPassages = "  nothing stands out";

    internal static string LookHead(string title, int bars, int played, bool asPlayed) => asPlayed ? $"{title}, {bars} bars, {played} as played" : $"{title}, {bars} bars";

    internal static string Confirmed(string path) => $"Who sings what: {path}";

    internal static string Guessed(string path) => $"Who sings what is guessed; confirm it once: warmup score map \"{path}\"";

    internal static string NotSung(IEnumerable<string> lines) => $"Left out: {string.Join(", ", lines)}";

    internal static string NoTempo(int beats) => Text($"The score names no tempo: times are reckoned at {beats} quarter notes a minute.");

    internal static string VowelsBy(string language) => $"Vowels by the spelling rules of {language}.";

    internal static string NoVowelRules(string language) => $"No vowel rules are known for '{language}' (only la, it, de), so no vowel was judged.";

    internal static string WeakPitches(int number) => number == 1 ? "One weak pitch is known from the logs (warmup review)." : Text($"{number} weak pitches are known from the logs (warmup review).");

    internal static string LineHead(string line, string part, string comfortable) => $"{line}: {part}, comfortable {comfortable}";

    internal static string InBar(string number) => $"bar {number}";

    internal static string Ends(string lowest, string highest, int notes) => Text($"  lowest {lowest}, highest {highest}, {notes} notes");

    internal static string Quartiles(string lower, string median, string upper) => $"  half of the time between {lower} and {upper}, middle {median}";

    internal static string Beyond(RangeTime time) => time.BeyondComfortable <= 0
        ? Text($"  {time.Sung:0} s sung, all of it comfortable")
        : Text($"  {time.Sung:0} s sung, {time.BeyondComfortable:0.#} s beyond comfortable ({100 * time.BeyondComfortable / time.Sung:0} %), {time.BeyondExtreme:0.#} s beyond extreme");

    internal static string Passage(string bars, double points, IEnumerable<string> reasons) => Text($"bars {bars} ({points:0.#}): {string.Join("; ", reasons)}");

    internal static string Numbered(int number, string passage) => Text($"  {number}. {passage}");

    internal static string MorePassages(int more) => more == 1 ? "  and one more (--all)" : Text($"  and {more} more (--all)");

    internal static string Reason(Hardship hardship, string pitch)
    {
        string unit = HardReasonData.Unit(hardship.Reason);
        string amount = unit.Length == 0 ? "" : Text($", {hardship.Amount:0.#} {unit}");
        return $"{HardReasonData.Words(hardship.Reason)} ({pitch}{amount})";
    }

    internal static string PictureLegend(int bars) => bars == 1 ? "one sign a bar: · easy, ░ ▒ ▓ harder, █ hardest" : Text($"one sign for {bars} bars: · easy, ░ ▒ ▓ harder, █ hardest");

    internal static string PageLegend(int bars) => bars == 1 ? "The higher and darker a bar, the harder it is for its part." : Text($"The higher and darker, the harder: one column for {bars} bars.");

    internal static string PageTitle(string title, string choir) => $"{title}: hard places for {choir}";

    internal static string CellTitle(string line, string bar, double points) => Text($"{line}, bar {bar}: {points:0.#}");

    internal const string PartAbout = "The part of the choir, or the line of the score by its name where a part sings several.";
    internal const string BarsAbout = "Bars by their printed numbers, such as 45-47.";
    internal const string PassageAbout = "Number of a passage of that part, as warmup score look lists them.";
    internal const string NeedAbout = "Take hard bars into needs.yaml: the next plan works on them.";
    internal const string PassageOrBars = "Say which bars: --passage N or --bars A-B, one of them.";
    internal const string NothingSungThere = "this part sings nothing in these bars";
    internal const string DrillAbout = "Cut an exercise out of bars of the score: it starts lower and slower, and its last key and tempo are the score's.";
    internal const string SimpleAbout = "A beat for every note instead of the rhythm of the score.";
    internal const string SyllablesAbout = "Syllables instead of the words of the score: one for all, such as noh, or one for each note.";
    internal const string OutAbout = "The file to write (a new one). Default: the choir's exercises folder.";
    internal const string DrillCaution = "These bars go beyond what the part sings with ease: sing lightly, rest between the keys, stop at any strain.";
    internal const string DrillThere = "there is such a drill already, and nothing is overwritten; move it away, or write this one elsewhere with --out";

    internal static string SeveralLines(string text, IEnumerable<string> lines) => $"several lines of the score are sung by '{text}'; name one: {string.Join("; ", lines)}";

    internal static string NoPassage(int number, int count) => count == 0
        ? "no passage of this part stands out; choose bars with --bars"
        : Text($"there is no passage {number} of this part; they go from 1 to {count}");

    internal static string NoBars(string text, string first, string last) => $"'{text}' names no bars of this score, which go from {first} to {last}: write for example 45-47";

    internal static string NeedThere(string need) => $"already there: {need}";

    internal static string DrillTitle(string piece, string part, string bars) => $"{piece}: {part}, bars {bars}";

    internal static string DrillInstruction(string piece, string bars) => $"Out of {piece}, bars {bars}: lower and slower first, as written at last.";

    internal static string DrillListen(IEnumerable<HardReason> reasons) => string.Join(", ", reasons.Select(HardReasonData.Words)) is { Length: > 0 } words ? $"What is hard here: {words}." : "";

    internal static string NoDrill(DrillRefusal refusal, string part) => refusal switch
    {
        DrillRefusal.NothingSung => NothingSungThere,
        DrillRefusal.TooLong => Text($"an exercise has at most {PatternText.MostNotes} notes and rests; choose fewer bars"),
        _ => $"these bars span more than {part} can sing at all in any key; choose fewer bars, or check its range (warmup ranges)",
    };

    internal static string NotArriving(string part) => $"Its ladder ends below the score: {part} cannot sing these bars at their own pitch at all (warmup ranges).";

    internal static string DrillWritten(string path, string id) => $"Written to {path}\nIn a plan: - exercise: {id}";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
