using WarmupConsole.Music.Repertoire.Mapping;
using WarmupConsole.Music.Voices;
using WarmupConsole.Storage.Scores;

namespace WarmupConsole.App.Scores;

/// <summary>What a director types to correct who sings what: "Canto=soprano".</summary>
internal static class MapChange
{
    /// <summary>The changed map, or what is wrong with the text.</summary>
    internal static (ScoreMap? Map, string Problem) Apply(ScoreMap map, IReadOnlyList<Part> parts, string text)
    {
        int at = text.LastIndexOf('=');
        if (at < 1)
        {
            return (null, ScoreTexts.NoEquals(text));
        }

        (string line, string singer) = (text[..at].Trim(), text[(at + 1)..].Trim());
        if (Find(map, line) is not { } found)
        {
            return (null, ScoreTexts.NoLine(line, map.Lines.Select(known => known.Line.Title)));
        }

        if (string.Equals(singer, ScoreMapFields.None, StringComparison.OrdinalIgnoreCase))
        {
            return (map.With(found, null), "");
        }

        return Part(parts, singer) is { } part
            ? (map.With(found, part), "")
            : (null, ScoreTexts.NoSinger(singer, parts.Select(part => part.Id)));
    }

    /// <summary>A part by id, name or letter, large or small.</summary>
    internal static Part? Part(IEnumerable<Part> parts, string text) => parts.FirstOrDefault(part =>
        Is(part.Id, text) || Is(part.Name, text) || part.Letters.Any(letter => Is(letter, text)));

    private static ScoreLine? Find(ScoreMap map, string text) => map.Lines.Select(singer => singer.Line)
        .FirstOrDefault(line => Is(line.Title, text) || (line.Voice.Length == 0 ? Is(line.Key, text) : Is($"{line.Key}, voice {line.Voice}", text)));

    private static bool Is(string name, string text) => string.Equals(name, text, StringComparison.OrdinalIgnoreCase);
}
