using System.Text;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Choirs;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Plans;

namespace WarmupConsole.App.Running;

/// <summary>Choir, plan and exercises as a log keeps them: what was true on that evening, whatever the files say now.</summary>
/// <param name="Choir">The choir.</param>
/// <param name="Plan">The plan, or null after an open run.</param>
/// <param name="Exercises">By id.</param>
internal sealed record LoggedContent(Choir Choir, Plan? Plan, IReadOnlyDictionary<string, Exercise> Exercises)
{
    private const string Place = "session log";

    /// <summary>Null when the log's choir cannot be read any more.</summary>
    internal static LoggedContent? Read(RunStarted start, IReadOnlyList<SessionRecord> records) => Read(start)?.With(records);

    /// <summary>The same with the exercises that were put in while it ran.</summary>
    internal LoggedContent With(IReadOnlyList<SessionRecord> records)
    {
        Exercise[] putIn = [.. records.Select(record => record.Event).OfType<StepAdded>().SelectMany(added => Exercise(added.ExerciseYaml))];
        return putIn.Length == 0 ? this : this with { Exercises = Exercises.Values.Concat(putIn).DistinctBy(exercise => exercise.Id).ToDictionary(exercise => exercise.Id) };
    }

    /// <summary>The steps that were put in, in the order of their numbers, which follow those of the plan.</summary>
    internal IEnumerable<WarmupStep> PutIn(IEnumerable<SessionRecord> records) => records.Select(record => record.Event).OfType<StepAdded>()
        .Where(added => Exercises.ContainsKey(added.Exercise)).Select(added => WarmupBuilder.Alone(Choir, Exercises[added.Exercise]));

    private static IReadOnlyList<Exercise> Exercise(string yaml) => ExerciseFile.Read(Place, Bytes(yaml)).Value ?? [];

    /// <summary>What stood in the log from its start. Null when the log's choir cannot be read any more.</summary>
    internal static LoggedContent? Read(RunStarted start)
    {
        if (ChoirFile.Read(Place, Bytes(start.ChoirYaml)).Value is not { } choir)
        {
            return null;
        }

        IReadOnlyList<Exercise> exercises = start.ExercisesYaml.Length == 0 ? [] : Exercise(start.ExercisesYaml);
        Plan? plan = start.PlanYaml.Length == 0 ? null : PlanFile.Read(Place, Bytes(start.PlanYaml), new PlanContext(exercises, choir)).Value;
        plan = plan is null ? null : plan with { Date = plan.Date ?? ChoirFolder.DateIn(start.PlanName) };
        return new(choir, plan, exercises.ToDictionary(exercise => exercise.Id));
    }

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);
}
