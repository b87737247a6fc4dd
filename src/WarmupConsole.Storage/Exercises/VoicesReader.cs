using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Text;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Exercises;

/// <summary>Reads the lines of parts that do not sing the pattern of the exercise.</summary>
internal static class VoicesReader
{
    internal static IReadOnlyList<VoiceLine> Read(MapReader exercise, Mode mode, Pattern? pattern) =>
        [.. exercise.Maps("voices").Select(fields => Voice(fields, mode, pattern)).OfType<VoiceLine>()];

    private static VoiceLine? Voice(MapReader fields, Mode mode, Pattern? whole)
    {
        IReadOnlyList<string> parts = Parts(fields);
        YamlNode? node = fields.Find("pattern");
        Pattern? pattern = PatternReader.Read(fields, node, mode);
        Beats offset = Offset(fields);
        fields.Finish();
        if (pattern is null)
        {
            return null;
        }

        VoiceLine voice = new(parts, pattern, offset);
        if (whole is not null && voice.Placed.Length > whole.Length)
        {
            fields.Problems.Add(node!, StorageTexts.VoiceTooLong(voice.Placed.Length, whole.Length));
        }

        return voice;
    }

    private static Beats Offset(MapReader fields)
    {
        if (fields.Find("offset") is not { } node || fields.Values.Filled(node, "offset") is not { } text)
        {
            return Beats.Zero;
        }

        if (!BeatsText.TryParse(text.Value, out Beats offset))
        {
            fields.Problems.Add(text, StorageTexts.InField("offset", MusicTextErrors.Beats(text.Value)));
        }

        return offset;
    }

    /// <summary>One name, or a list of them.</summary>
    private static List<string> Parts(MapReader fields)
    {
        List<string> parts = [];
        foreach (YamlNode item in fields.OneOrMany("parts"))
        {
            if (fields.Values.Id(item, "parts") is { } part)
            {
                parts.Add(part);
                if (part == LadderSpec.Everyone)
                {
                    fields.Problems.Add(item, StorageTexts.VoiceForEveryone);
                }
            }
        }

        return parts;
    }
}
