using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
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
            Keys = Keys(step),
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

    private LadderSpec Keys(MapReader step)
    {
        if (step.Map("keys") is not { } keys)
        {
            return new();
        }

        LadderSpec spec = new()
        {
            Start = Start(keys),
            Shape = keys.Choice<LadderShape>("shape") ?? LadderShape.UpAndBack,
            Limit = Limit(keys),
            ReachPercent = keys.Whole("reach") ?? 0,
            ToleranceSemitones = keys.Whole("tolerance") ?? 2,
            StepSemitones = keys.Whole("by") ?? 1,
            TakesOctave = keys.YesNo("octave") ?? false,
            MostKeys = keys.Whole("most"),
        };
        keys.Finish();
        return spec;
    }

    private Pitch? Start(MapReader keys)
    {
        if (keys.Find("start") is not { } node)
        {
            return null;
        }

        if (node is YamlText text && Pitch.TryParse(text.Value, out Pitch pitch))
        {
            return pitch;
        }

        problems.Add(node, StorageTexts.WrongType("start", "a pitch such as C4, Bb3 or F#4", node));
        return null;
    }

    private string Limit(MapReader keys)
    {
        if (keys.Find("limit") is not { } node || keys.Values.Id(node, "limit") is not { } id)
        {
            return LadderSpec.Everyone;
        }

        if (context is not null && Limits() is var names && !names.Contains(id))
        {
            problems.Add(node, StorageTexts.UnknownLimit(id, names));
        }

        return id;
    }

    private List<string> Limits() =>
    [
        LadderSpec.Everyone,
        LadderSpec.AnyPart,
        .. context!.Choir.Parts.Select(part => part.Id),
        .. context.Choir.Parts.SelectMany(part => part.Groups).Distinct(),
    ];

    private void CheckExercise(MapReader step, PlanStep read)
    {
        if (context is null || read.ExerciseId.Length == 0)
        {
            return;
        }

        Exercise? exercise = context.Exercises.FirstOrDefault(known => known.Id == read.ExerciseId);
        if (exercise is null)
        {
            IReadOnlyList<string> near = Nearest.To(read.ExerciseId, context.Exercises.Select(known => known.Id));
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
