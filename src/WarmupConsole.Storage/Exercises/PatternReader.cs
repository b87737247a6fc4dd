using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Scales;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Exercises;

/// <summary>Reads a pattern with the syllables that stand beside it.</summary>
internal static class PatternReader
{
    /// <param name="fields">What holds both.</param>
    /// <param name="node">The pattern's value; null when it is missing, which has been told.</param>
    /// <param name="mode">The mode that its sol-fa is understood in.</param>
    internal static Pattern? Read(MapReader fields, YamlNode? node, Mode mode)
    {
        YamlNode? syllables = fields.Find("syllables");
        Pattern? pattern = node is null ? null : MusicField.Read(fields, node, "pattern", text => PatternText.Parse(text, mode))?.Value;
        return pattern is null || syllables is null
            ? pattern
            : MusicField.Read(fields, syllables, "syllables", text => SyllableText.Apply(pattern, text))?.Value ?? pattern;
    }
}
