using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Plans;

/// <summary>Reads one step of a plan and looks its names up.</summary>
internal sealed class PlanStepReader(PlanContext? context, ProblemList problems)
{
    internal PlanStep Read(MapReader step)
    {
        (Tempo? tempo, Tempo? lastTempo) = Tempos(step);
        PlanStep read = new()
        {
            ExerciseId = step.Id("exercise"),
            TalkSeconds = step.Whole("talk"),
            Tempo = tempo,
            LastTempo = lastTempo,
            Rounds = step.Whole("rounds"),
            BreathBeats = step.Whole("breath") ?? 2,
            Keys = KeysReader.Read(step, context?.Choir) ?? new(),
            Answers = step.Texts("answers") is { Count: > 0 } answers ? answers : [],
            Value = step.Whole("value"),
            Piano = PianoField.Read(step),
            Because = step.Texts("because"),
        };
        CheckExercise(step, read);
        step.Finish();
        return read;
    }

    /// <summary>One tempo, or one of the first key and one of the last.</summary>
    private static (Tempo? First, Tempo? Last) Tempos(MapReader step)
    {
        if (step.Find("tempo") is not YamlMap || step.Map("tempo") is not { } tempos)
        {
            return (TempoField.Read(step, "tempo"), null);
        }

        (Tempo? First, Tempo? Last) read = (TempoField.Read(tempos, "from"), TempoField.Read(tempos, "to"));
        tempos.Finish();
        return read;
    }

    private void CheckExercise(MapReader step, PlanStep read)
    {
        if (context is null || read.ExerciseId.Length == 0)
        {
            return;
        }

        Exercise? exercise = context.Exercises.Find(read.ExerciseId);
        if (exercise is null)
        {
            IReadOnlyList<string> near = Nearest.To(read.ExerciseId, context.Exercises.Ids);
            problems.Add(step.Find("exercise")!, StorageTexts.UnknownExercise(read.ExerciseId, near));
        }
        else if (exercise.IsSung && step.Find("rounds") is { } rounds)
        {
            problems.Add(rounds, StorageTexts.RoundsWhenSung(exercise.Id));
        }
        else if (!exercise.IsSung && step.Find("tempo") is YamlMap)
        {
            problems.Add(step.Find("tempo")!, StorageTexts.TempoOfKeys(exercise.Id));
        }
    }
}
