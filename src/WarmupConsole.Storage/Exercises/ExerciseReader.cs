using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Storage.Plans;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Exercises;

/// <summary>Reads one exercise.</summary>
internal static class ExerciseReader
{
    private static readonly Tempo Unread = Tempo.FromBeatsPerMinute(60);

    internal static Exercise Read(MapReader fields)
    {
        Stage? stage = fields.Required("stage") is { } node ? fields.Values.Choice(node, "stage", ExerciseWords.Stages) : null;
        Exercise common = new()
        {
            Id = fields.Id("id"),
            Title = fields.Text("title"),
            Stage = stage ?? Stage.Sung,
            Tempo = ReadTempo(fields),
            Purposes = Purposes(fields),
            Instruction = fields.Text("instruction", ""),
            Listen = fields.Text("listen", ""),
            Caution = fields.Text("caution", ""),
            TalkSeconds = fields.Whole("talk", PlanWords.Talk) ?? 15,
        };
        bool hasPhases = stage is { } known ? ExerciseWords.HasPhases(known) : fields.Optional("phases") is not null;
        Exercise whole = hasPhases ? PhaseReader.Read(fields, common) : Sung(fields, common);
        fields.Finish();
        return whole;
    }

    /// <summary>Tells the fields that mean nothing in this stage.</summary>
    internal static void Refuse(MapReader fields, Stage stage, params IReadOnlyList<string> names)
    {
        foreach (string name in names)
        {
            if (fields.Optional(name) is { } node)
            {
                fields.Problems.Add(node, StorageTexts.NotForStage(name, StageData.Words(stage)));
            }
        }
    }

    private static Exercise Sung(MapReader fields, Exercise common)
    {
        Refuse(fields, common.Stage, "phases", "rounds");
        Mode mode = fields.Choice("mode", ExerciseWords.Modes) ?? Mode.Major;
        YamlNode? line = fields.Optional("pattern");
        if (line is null)
        {
            fields.Problems.Add(fields.Place, StorageTexts.PatternMissing(StageData.Words(common.Stage)));
        }

        Pattern? pattern = PatternReader.Read(fields, line, mode);
        IReadOnlyList<HarmonyChord> harmony = fields.Optional("harmony") is { } node
            ? MusicField.Read(fields, node, "harmony", text => HarmonyText.Parse(text, pattern?.Length))?.Value ?? []
            : [];
        return common with
        {
            Mode = mode,
            Pattern = pattern,
            Voices = VoicesReader.Read(fields, mode, pattern),
            Harmony = harmony,
            Dynamics = Dynamics(fields),
            Articulation = fields.Choice("articulation", ExerciseWords.Articulations) ?? Articulation.Legato,
        };
    }

    private static TempoRange ReadTempo(MapReader fields)
    {
        if (fields.Required("tempo") is not { } node || MapReader.Over(node, "'tempo'", fields.Problems) is not { } tempo)
        {
            return new(Unread, Unread, Unread);
        }

        Tempo? usual = TempoField.Required(tempo, "default");
        Tempo? from = TempoField.Required(tempo, "from");
        Tempo? to = TempoField.Required(tempo, "to");
        tempo.Finish();
        if (usual < from || usual > to || from > to)
        {
            fields.Problems.Add(node, StorageTexts.TempoOrder);
        }

        return new(usual ?? Unread, from ?? Unread, to ?? Unread);
    }

    private static IReadOnlyList<Purpose> Purposes(MapReader fields) =>
        [.. fields.OptionalItems("purposes", ExerciseWords.Purposes)
            .Select(item => fields.Values.Choice(item, "purposes", ExerciseWords.PurposeNames))
            .OfType<Purpose>().Distinct()];

    private static List<string> Dynamics(MapReader fields)
    {
        IReadOnlyList<YamlNode> items = fields.Optional("dynamics") switch
        {
            null => [],
            YamlText single => [single],
            _ => fields.OptionalItems("dynamics", ExerciseWords.Dynamics),
        };
        List<string> words = [.. items
            .Select(item => fields.Values.Choice(item, "dynamics", ExerciseWords.Loudness))
            .OfType<int>().Select(ExerciseWords.Loudness.Name)];
        return words.Count == 0 ? ["mf"] : words;
    }
}
