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
            TalkSeconds = step.Whole("talk", PlanWords.Talk),
            Tempo = tempo,
            LastTempo = lastTempo,
            Rounds = step.Whole("rounds", PlanWords.Rounds),
            BreathBeats = step.Whole("breath", PlanWords.Breath) ?? 2,
            Keys = Keys(step),
            Because = step.Texts("because", PlanWords.Because),
        };
        CheckExercise(step, read);
        step.Finish();
        return read;
    }

    /// <summary>One tempo, or one of the first key and one of the last.</summary>
    private (Tempo? First, Tempo? Last) Tempos(MapReader step)
    {
        if (step.Optional("tempo") is not YamlMap || MapReader.Over(step.Optional("tempo")!, "'tempo'", problems) is not { } tempos)
        {
            return (TempoField.Optional(step, "tempo"), null);
        }

        (Tempo? First, Tempo? Last) read = (TempoField.Optional(tempos, "from"), TempoField.Required(tempos, "to"));
        tempos.Finish();
        return read;
    }

    private LadderSpec Keys(MapReader step)
    {
        if (step.Optional("keys") is not { } node || MapReader.Over(node, "'keys'", problems) is not { } keys)
        {
            return new();
        }

        LadderSpec spec = new()
        {
            Start = Start(keys),
            Shape = keys.Choice("shape", PlanWords.Shapes) ?? LadderShape.UpAndBack,
            Limit = Limit(keys),
            ReachPercent = keys.Whole("reach", PlanWords.Reach) ?? 0,
            ToleranceSemitones = keys.Whole("tolerance", PlanWords.Tolerance) ?? 2,
            StepSemitones = keys.Whole("by", PlanWords.By) ?? 1,
            TakesOctave = keys.YesNo("octave") ?? false,
            MostKeys = keys.Whole("most", PlanWords.Most),
        };
        keys.Finish();
        return spec;
    }

    private Pitch? Start(MapReader keys)
    {
        if (keys.Optional("start") is not { } node)
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
        if (keys.Optional("limit") is not { } node || keys.Values.Id(node, "limit") is not { } id)
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
            problems.Add(step.Required("exercise")!, StorageTexts.UnknownExercise(read.ExerciseId, near));
        }
        else if (exercise.IsSung && step.Optional("rounds") is { } rounds)
        {
            problems.Add(rounds, StorageTexts.RoundsWhenSung(exercise.Id));
        }
        else if (!exercise.IsSung && step.Optional("tempo") is YamlMap)
        {
            problems.Add(step.Optional("tempo")!, StorageTexts.TempoOfKeys(exercise.Id));
        }
    }
}
