using WarmupConsole.Music.Exercises;
using WarmupConsole.Storage.Plans;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Exercises;

/// <summary>Reads what body and breathing exercises have: counted phases and rounds.</summary>
internal static class PhaseReader
{
    internal static Exercise Read(MapReader fields, Exercise common)
    {
        ExerciseReader.Refuse(fields, common.Stage, "mode", "pattern", "syllables", "voices", "harmony", "dynamics", "articulation");
        if (fields.Optional("phases") is null)
        {
            fields.Problems.Add(fields.Place, StorageTexts.PhasesMissing(StageData.Words(common.Stage)));
        }

        return common with
        {
            Phases = [.. fields.OptionalItems("phases", ExerciseWords.Phases)
                .Select(node => MapReader.Over(node, "a phase", fields.Problems))
                .OfType<MapReader>().Select(Phase)],
            Rounds = fields.Whole("rounds", PlanWords.Rounds) ?? 1,
        };
    }

    private static BreathPhase Phase(MapReader phase)
    {
        BreathAction action = phase.Required("do") is { } node
            ? phase.Values.Choice(node, "do", ExerciseWords.Actions) ?? BreathAction.Move
            : BreathAction.Move;
        YamlNode? counts = phase.Required("counts");
        int? number = counts is null ? null : phase.Values.Whole(counts, "counts", ExerciseWords.Counts);
        if (action == BreathAction.Hold && number > ExerciseWords.LongestHold)
        {
            phase.Problems.Add(counts!, StorageTexts.HoldTooLong(number.Value));
        }

        string say = phase.Text("say", "");
        phase.Finish();
        return new(action, number ?? 1, say);
    }
}
