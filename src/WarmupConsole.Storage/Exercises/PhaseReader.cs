using WarmupConsole.Music.Exercises;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Exercises;

/// <summary>Reads what body and breathing exercises have: counted phases and rounds.</summary>
internal static class PhaseReader
{
    internal static Exercise Read(MapReader fields, Exercise common)
    {
        ExerciseReader.Refuse(fields, common.Stage, ExerciseFields.SungOnly);
        if (fields.Find("phases") is null)
        {
            fields.Problems.Add(fields.Place, StorageTexts.PhasesMissing(StageData.Words(common.Stage)));
        }

        if (common.LastTempo is not null)
        {
            fields.Problems.Add(fields.Find("tempo")!, StorageTexts.LastTempoSung);
        }

        return common with
        {
            LastTempo = null,
            Phases = [.. fields.Maps("phases").Select(Phase)],
            Rounds = fields.Whole("rounds") ?? 1,
        };
    }

    private static BreathPhase Phase(MapReader phase)
    {
        BreathAction action = phase.Choice<BreathAction>("do") ?? BreathAction.Move;
        int? number = phase.Whole("counts");
        if (action == BreathAction.Hold && number > ExerciseWords.LongestHold)
        {
            phase.Problems.Add(phase.Find("counts")!, StorageTexts.HoldTooLong(number.Value));
        }

        string say = phase.Text("say", "");
        phase.Finish();
        return new(action, number ?? 1, say);
    }
}
