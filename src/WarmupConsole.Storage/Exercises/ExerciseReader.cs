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
        Stage? stage = fields.Choice<Stage>("stage");
        (TempoRange tempo, Tempo? last) = ReadTempo(fields);
        Exercise common = new()
        {
            Id = fields.Id("id"),
            Title = fields.Text("title"),
            Stage = stage ?? Stage.Sung,
            Tempo = tempo,
            LastTempo = last,
            Purposes = [.. fields.Choices<Purpose>("purposes").Distinct()],
            Instruction = fields.Text("instruction", ""),
            Listen = fields.Text("listen", ""),
            Caution = fields.Text("caution", ""),
            TalkSeconds = fields.Whole("talk") ?? 15,
        };
        bool hasPhases = stage is { } known ? ExerciseWords.HasPhases(known) : fields.Find("phases") is not null;
        Exercise whole = hasPhases ? PhaseReader.Read(fields, common) : Sung(fields, common);
        fields.Finish();
        return whole;
    }

    /// <summary>Tells the fields that mean nothing in this stage.</summary>
    internal static void Refuse(MapReader fields, Stage stage, params IReadOnlyList<string> names)
    {
        foreach (string name in names)
        {
            if (fields.Find(name) is { } node)
            {
                fields.Problems.Add(node, StorageTexts.NotForStage(name, StageData.Words(stage)));
            }
        }
    }

    private static Exercise Sung(MapReader fields, Exercise common)
    {
        Refuse(fields, common.Stage, ExerciseFields.CountedOnly);
        Mode mode = fields.Choice<Mode>("mode") ?? Mode.Major;
        YamlNode? line = fields.Find("pattern");
        if (line is null)
        {
            fields.Problems.Add(fields.Place, StorageTexts.PatternMissing(StageData.Words(common.Stage)));
        }

        Pattern? pattern = PatternReader.Read(fields, line, mode);
        IReadOnlyList<HarmonyChord> harmony = fields.Find("harmony") is { } node
            ? MusicField.Read(fields, node, "harmony", text => HarmonyText.Parse(text, pattern?.Length))?.Value ?? []
            : [];
        return common with
        {
            Mode = mode,
            Pattern = pattern,
            Voices = VoicesReader.Read(fields, mode, pattern),
            Harmony = harmony,
            Piano = PianoField.Read(fields),
            Dynamics = Dynamics(fields),
            Articulation = fields.Choice<Articulation>("articulation") ?? Articulation.Legato,
            Keys = KeysReader.Read(fields, null),
        };
    }

    private static (TempoRange Range, Tempo? Last) ReadTempo(MapReader fields)
    {
        if (fields.Map("tempo") is not { } tempo)
        {
            return (new(Unread, Unread, Unread), null);
        }

        Tempo? usual = TempoField.Read(tempo, "default");
        Tempo? from = TempoField.Read(tempo, "from");
        Tempo? to = TempoField.Read(tempo, "to");
        Tempo? last = TempoField.Read(tempo, "last");
        tempo.Finish();
        if (usual < from || usual > to || from > to || last < from || last > to)
        {
            fields.Problems.Add(tempo.Place, StorageTexts.TempoOrder);
        }

        return (new(usual ?? Unread, from ?? Unread, to ?? Unread), last);
    }

    private static List<string> Dynamics(MapReader fields)
    {
        List<string> words = [.. fields.Choices<int>("dynamics").Select(ExerciseWords.Loudness.Name)];
        return words.Count == 0 ? ["mf"] : words;
    }
}
