using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Marks;

/// <summary>A mark in words, so that the director sees at a glance how it was understood.</summary>
public static class MarkWords
{
    /// <summary>
    /// "altos slightly flat in E", "tenors and basses sharp on A♭3 (in D♭)", "noted: ..." for a free note, or "pinned in E" for a pin. The key is the one named, else the
    /// anchor's. Control characters of the typed text are left out.
    /// </summary>
    public static string Echo(MarkContent content, MarkAnchor anchor, Choir choir)
    {
        ArgumentNullException.ThrowIfNull(content);
        ArgumentNullException.ThrowIfNull(anchor);
        ArgumentNullException.ThrowIfNull(choir);
        return content.KindId is { } kind
            ? Sentence(choir, content.PartIds, What(choir, kind, content.Strength), Where(choir.Notes, content.Pitch, content.Place, content.Key ?? anchor.Tonic))
            : content.Raw.Length > 0 ? "noted: " + MarkText.Clean(content.Raw)
            : $"pinned {Where(choir.Notes, null, "", anchor.Tonic)}".TrimEnd();
    }

    /// <summary>Who was what, and where: "altos flat in E". The last argument may be empty.</summary>
    internal static string Sentence(Choir choir, IReadOnlyList<string> partIds, string what, string where) =>
        $"{PartNames.Sentence(choir, partIds)} {what} {where}".TrimEnd();

    /// <summary>"slightly flat"; a kind that the choir does not know any more is shown by its id.</summary>
    internal static string What(Choir choir, string kindId, string strength) =>
        MarkText.Clean($"{strength} {MarkKindData.Find(choir, kindId)?.Words ?? kindId}");

    /// <summary>"on A♭3 (in D♭)", "coming down in E", "in E", or empty when nothing is known.</summary>
    internal static string Where(NoteNaming notes, Pitch? pitch, string place, Pitch? key)
    {
        string inKey = key is { } tonic ? "in " + notes.WriteName(tonic) : "";
        string[] words = [
            pitch is { } at ? "on " + notes.Write(at) : "",
            .. place.Split(", ", StringSplitOptions.RemoveEmptyEntries).Select(part => PlaceData.InSentence(part, notes)),
            pitch is null || inKey.Length == 0 ? inKey : $"({inKey})",
        ];
        return string.Join(' ', words.Where(word => word.Length > 0));
    }
}
