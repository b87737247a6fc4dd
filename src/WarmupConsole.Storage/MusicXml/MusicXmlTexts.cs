using System.Globalization;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.MusicXml;

/// <summary>Every sentence that is said about score files. What is wrong, what was done about it, what to do.</summary>
internal static class MusicXmlTexts
{
    internal const string TooLarge = "the file is larger than 32 MB, which no choral score is; check that it is the right one";
    internal const string Unpacked = "the score in this container is larger than 32 MB once unpacked, which no choral score is; nothing of it was read";
    internal const string ManyEntries = "the container holds more than 1000 files, which no score does; nothing of it was read";
    internal const string NotAZip = "the file ends in .mxl but is no compressed score; export it again, uncompressed (.musicxml) if need be";
    internal const string NoScoreInside = "the container holds no score; export it again from the notation program";
    internal const string NoContainer = "the container has no list of its contents (META-INF/container.xml); the first score found in it was read";
    internal const string Empty = "the file is empty; export the score again";
    internal const string Utf32 = "the file is UTF-32 text, which is not read; export it again as UTF-8";
    internal const string NoParts = "the score has no part that could be read; check that it is the right file, or export it again";
    internal const string ManyNotes = "here the score goes beyond 500000 notes, which no choral score does; the rest was left out";
    internal const string ExternalEntity = "the text refers to something outside the file, which is never fetched; the score was read up to here";

    internal static string PointsOutside(string path) => $"the container names '{Short(path)}', which lies outside of it; nothing was read. Export the score again";

    internal static string NotInside(string path) => $"the container names '{Short(path)}' as its score, and there is no such file in it; export it again";

    internal static string Damaged(string reason) => $"the container is damaged ({reason}); export the score again";

    internal static string NotUtf8(string encoding) => $"here the text is not {encoding}, as the file says; characters that could not be read are shown as U+FFFD";

    internal static string OtherEncoding(string encoding) => $"the file says it is '{Short(encoding)}', which it is not or which is not read; it was read as UTF-8";

    internal static string BrokenXml(string reason) => $"here the text is no well-formed XML ({Printable.Line(reason)}); the score was read up to here";

    internal static string NotMusicXml(string root) => $"this is no MusicXML score: it begins with '{Short(root)}' instead of score-partwise or score-timewise";

    internal static string NoEntity(string name) => $"the name '{Short(name)}' is declared in the file itself; it is shown as it stands and never expanded";

    internal static string ManyParts(int parts) => string.Create(CultureInfo.InvariantCulture, $"the score has more than {parts} parts; those from here on were left out");

    internal static string ManyBars(string part, int bars) => string.Create(CultureInfo.InvariantCulture, $"{part} has more than {bars} bars; the rest of them was left out");

    internal static string NoPitch(string place) => $"{place}: a note has no pitch that can be read; it was left out";

    internal static string NoNumber(string place, string element, string text) => $"{place}: '{Short(text)}' is no {element} that can be used; it was left out";

    internal static string Microtone(string place) => $"{place}: microtones are taken for the nearest semitone, here and further on in this part";

    internal static string BeforeBar(string place) => $"{place}: the voices go back before the beginning of the bar; they were set at its beginning";

    internal static string BarLength(string place, double is_, double should) => string.Create(
        CultureInfo.InvariantCulture,
        $"{place}: the bar lasts {is_:0.###} quarter notes and its time signature says {should:0.###}; it was taken as it stands");

    internal static string At(string part, string bar) => $"{Printable.Line(part)}, bar {Printable.Line(bar)}";

    private static string Short(string text) => Printable.Line(text.Length <= 40 ? text : text[..40] + "…");
}
