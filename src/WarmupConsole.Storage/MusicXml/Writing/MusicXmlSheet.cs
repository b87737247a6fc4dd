using System.Globalization;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.TakeAlong;

namespace WarmupConsole.Storage.MusicXml.Writing;

/// <summary>
/// The exercises of a plan as a MusicXML 4.0 score (partwise): each one once, in its first key, with a staff for every part in its own
/// octave, chord symbols, and the list of all its keys.
/// </summary>
public static class MusicXmlSheet
{
    private const string Version = "4.0";

    /// <summary>The bytes of the file.</summary>
    /// <param name="warmup">With at least one part and one step that can be led.</param>
    /// <param name="remarks">Sentences that belong to it, such as the voice-care card.</param>
    public static byte[] Write(Warmup warmup, IReadOnlyList<string> remarks)
    {
        ArgumentNullException.ThrowIfNull(warmup);
        IReadOnlyList<ExerciseSheet> sheets = ExerciseSheet.Of(warmup);
        using XmlOutput xml = new();
        xml.Around("score-partwise", () =>
        {
            xml.Around("work", () => xml.Put("work-title", TakeAlongTexts.Title(warmup)));
            xml.Around("identification", () => xml.Around("encoding", () => xml.Put("software", MusicXmlSheetTexts.Software)));
            foreach (string remark in remarks)
            {
                xml.Around("credit", () => xml.Put("credit-words", remark), ("page", "1"));
            }

            xml.Around("part-list", () => PartList(xml, warmup.Choir.Parts));
            foreach ((int index, Part part) in warmup.Choir.Parts.Index())
            {
                xml.Around("part", () => new PartSheet(xml, part, index, warmup.Choir.Notes).Write(sheets), ("id", Id(index)));
            }
        }, ("version", Version));
        return xml.Finish();
    }

    private static void PartList(XmlOutput xml, IReadOnlyList<Part> parts)
    {
        foreach ((int index, Part part) in parts.Index())
        {
            xml.Around("score-part", () => xml.Put("part-name", part.Name), ("id", Id(index)));
        }
    }

    private static string Id(int index) => string.Create(CultureInfo.InvariantCulture, $"P{index + 1}");
}
