using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>A plan in the making: a value, so that every change can be tried and dropped.</summary>
internal sealed record Draft(Choir Choir, Plan Frame, ReadySteps ReadySteps, IReadOnlyList<DraftStep> Steps)
{
    internal static Draft Of(NextPlanInput input) => new(
        input.Choir,
        input.Last with { Date = input.Date, Steps = [] },
        new(input),
        [.. input.Last.Steps.Select((step, index) => new DraftStep(step, index, []))]);

    internal IReadOnlyDictionary<string, Exercise> Exercises => ReadySteps.Exercises;

    internal Plan Finish() => Frame with { Steps = [.. Steps.Select(step => step.Step)] };

    internal Warmup Ready() => new(Choir, Finish(), [.. Steps.Select(step => Ready(step.Step))]);

    internal WarmupStep Ready(PlanStep step) => ReadySteps.Of(step);

    internal int Errors() => PlanCheck.Errors(Ready());

    internal Exercise ExerciseOf(int index) => Exercises[Steps[index].Step.ExerciseId];

    internal bool Uses(string exerciseId) => Steps.Any(step => step.Step.ExerciseId == exerciseId);

    internal Draft With(int index, DraftStep step) => this with { Steps = [.. Steps.Select((old, at) => at == index ? step : old)] };

    /// <summary>Puts a step behind the last one of its stage or an earlier stage.</summary>
    internal Draft Insert(DraftStep step)
    {
        Stage stage = Exercises[step.Step.ExerciseId].Stage;
        int place = Enumerable.Range(0, Steps.Count).LastOrDefault(index => ExerciseOf(index).Stage <= stage, -1) + 1;
        return this with { Steps = [.. Steps.Take(place), step, .. Steps.Skip(place)] };
    }
}
