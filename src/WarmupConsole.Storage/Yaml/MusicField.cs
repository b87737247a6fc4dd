using WarmupConsole.Music.Text;

namespace WarmupConsole.Storage.Yaml;

/// <summary>Texts that hold music: what the music parsers find wrong is told at its place in the file.</summary>
internal static class MusicField
{
    internal static Parsed<T>? Read<T>(MapReader reader, YamlNode node, string name, Func<string, Parsed<T>> parse)
    {
        if (reader.Values.Filled(node, name) is not { } text)
        {
            return null;
        }

        Parsed<T> parsed = parse(text.Value);
        foreach (TextError error in parsed.Errors)
        {
            reader.Problems.Add(text.Stretch(error.Offset, error.Length), StorageTexts.InField(name, error.Message));
        }

        return parsed.Ok ? parsed : null;
    }
}
