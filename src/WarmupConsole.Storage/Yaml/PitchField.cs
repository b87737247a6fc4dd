using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Storage.Yaml;

/// <summary>A named pitch in a file.</summary>
internal static class PitchField
{
    /// <summary>Null when it is not there, or is no pitch and reported.</summary>
    internal static Pitch? Read(MapReader reader, string name)
    {
        if (reader.Find(name) is not { } node)
        {
            return null;
        }

        if (node is YamlText text && Pitch.TryParse(text.Value, out Pitch pitch))
        {
            return pitch;
        }

        reader.Problems.Add(node, StorageTexts.WrongType(name, "a pitch such as C4, Bb3 or F#4", node));
        return null;
    }
}
