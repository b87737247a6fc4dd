using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Practice;

/// <summary>What was practised in some sessions: purposes covered, and how long each exercise usually takes.</summary>
/// <param name="Purposes">Every purpose, the longest not covered first.</param>
/// <param name="Exercises">Every exercise led, the commonest first.</param>
/// <param name="Gone">Ids of exercises that were led and are not known any more: they count for no purpose.</param>
public sealed record Practised(IReadOnlyList<PurposePractice> Purposes, IReadOnlyList<ExercisePractice> Exercises, IReadOnlyList<string> Gone)
{
    /// <param name="sessions">Oldest first.</param>
    /// <param name="exercises">The exercises as they are now.</param>
    public static Practised In(IReadOnlyList<SungSession> sessions, IReadOnlyList<Exercise> exercises)
    {
        ArgumentNullException.ThrowIfNull(sessions);
        ArgumentNullException.ThrowIfNull(exercises);
        Dictionary<string, Exercise> known = exercises.DistinctBy(exercise => exercise.Id).ToDictionary(exercise => exercise.Id);
        (int Session, LedStep Step)[] led = [.. sessions.Index().SelectMany(session => session.Item.Led.Where(step => step.HasBegun).Select(step => (session.Index, step)))];
        ILookup<Purpose, int> served = led.Where(one => known.ContainsKey(one.Step.Exercise))
            .SelectMany(one => known[one.Step.Exercise].Purposes.Select(purpose => (purpose, one.Session))).ToLookup(one => one.purpose, one => one.Session);
        return new(
            [.. Enum.GetValues<Purpose>().Select(purpose => Of(purpose, [.. served[purpose]], sessions)).OrderByDescending(purpose => purpose.Since).ThenBy(purpose => purpose.Steps)],
            [.. led.GroupBy(one => one.Step.Exercise).Select(same => Of(same.Key, known, [.. same.Select(one => one.Step)], sessions[same.Last().Session].Start))
                .OrderByDescending(exercise => exercise.Times).ThenBy(exercise => exercise.Title, StringComparer.Ordinal)],
            [.. led.Select(one => one.Step.Exercise).Distinct().Where(id => !known.ContainsKey(id)).Order(StringComparer.Ordinal)]);
    }

    private static PurposePractice Of(Purpose purpose, int[] served, IReadOnlyList<SungSession> sessions) => served.Length == 0
        ? new(purpose, 0, 0, null, sessions.Count)
        : new(purpose, served.Length, served.Distinct().Count(), sessions[served[^1]].Start, sessions.Count - 1 - served[^1]);

    private static ExercisePractice Of(string id, Dictionary<string, Exercise> known, LedStep[] steps, DateTimeOffset last) => new(
        id, known.TryGetValue(id, out Exercise? exercise) ? exercise.Title : id, steps.Length, Middle(steps.Select(step => step.Talk)), Middle(steps.Select(step => step.Spent)), last);

    private static TimeSpan Middle(IEnumerable<TimeSpan> times) => times.Order().ToArray() is var ordered ? ordered[ordered.Length / 2] : default;
}
