using System.Text;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Plans;

namespace WarmupConsole.App.Running;

/// <summary>Choir, plan and exercises as a log keeps them: what was true on that evening, whatever the files say now.</summary>
/// <param name="Choir">The choir.</param>
/// <param name="Plan">The plan, or null after an open run.</param>
/// <param name="Exercises">By id.</param>
internal sealed record LoggedContent(Choir Choir, Plan? Plan, IReadOnlyDictionary<string, Exercise> Exercises)
{
    /// <summary>Null when the log's choir cannot be read any more.</summary>
    internal static LoggedContent? Read(RunStarted start, IReadOnlyList<SessionRecord> records) => Read(start, records, new LoggedTexts());

    /// <summary>The same, with what other logs held too read already.</summary>
    internal static LoggedContent? Read(RunStarted start, IReadOnlyList<SessionRecord> records, LoggedTexts texts)
    {
        if (texts.Choir(start.ChoirYaml) is not { } choir)
        {
            return null;
        }

        IReadOnlyList<Exercise> planned = texts.Exercises(start.ExercisesYaml);
        IEnumerable<Exercise> putIn = records.Select(record => record.Event).OfType<StepAdded>().SelectMany(added => texts.Exercises(added.ExerciseYaml));
        return new(choir, PlanOf(start, choir, planned), planned.Concat(putIn).DistinctBy(exercise => exercise.Id).ToDictionary(exercise => exercise.Id));
    }

    /// <summary>The steps that were put in, in the order of their numbers, which follow those of the plan.</summary>
    internal IEnumerable<WarmupStep> PutIn(IEnumerable<SessionRecord> records) => records.Select(record => record.Event).OfType<StepAdded>()
        .Where(added => Exercises.ContainsKey(added.Exercise)).Select(added => WarmupBuilder.Alone(Choir, Exercises[added.Exercise]));

    private static Plan? PlanOf(RunStarted start, Choir choir, IReadOnlyList<Exercise> exercises)
    {
        Plan? plan = start.PlanYaml.Length == 0 ? null : PlanFile.Read(LoggedTexts.Place, Encoding.UTF8.GetBytes(start.PlanYaml), new PlanContext(exercises, choir)).Value;
        return plan is null ? null : plan with { Date = plan.Date ?? ChoirFolder.DateIn(start.PlanName) };
    }
}
