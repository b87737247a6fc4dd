using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>A plan in the making: a value, so that every change can be tried and dropped.</summary>
internal sealed record Draft(NextPlanInput Input, Plan Frame, ReadySteps ReadySteps, IReadOnlyList<DraftStep> Steps)
{
    /// <summary>The minutes are kept last of all, so until then a draft may be too long or too short.</summary>
    private const string LengthRule = "planned-length";

    internal static Draft Of(NextPlanInput input) => new(
        input,
        input.Last with { Date = input.Date, Off = Carrying.Off(input), Steps = [] },
        new(input),
        [.. input.Last.Steps.Select((_, index) => Carrying.Step(input, index))]);

    internal Choir Choir => Input.Choir;

    internal IReadOnlyDictionary<string, Exercise> Exercises => Input.Exercises;

    internal Plan Finish() => Frame with { Steps = [.. Steps.Select(step => step.Step)] };

    internal Warmup Ready() => new(Choir, Finish(), [.. Steps.Select(step => Ready(step.Step))]);

    internal WarmupStep Ready(PlanStep step) => ReadySteps.Of(step);

    internal int Errors() => PlanCheck.Errors(Ready());

    /// <summary>True when the check says no more about this draft than about the one before the change, on each level of severity.</summary>
    internal bool IsNoWorseThan(Draft before, PlanSeverity least)
    {
        if (Errors() > before.Errors())
        {
            return false;
        }

        ILookup<PlanSeverity, PlanRemark> mine = Remarks();
        ILookup<PlanSeverity, PlanRemark> others = before.Remarks();
        return Enum.GetValues<PlanSeverity>().Where(severity => severity >= least).All(severity => mine[severity].Count() <= others[severity].Count());
    }

    internal Exercise ExerciseOf(int index) => Exercises[Steps[index].Step.ExerciseId];

    internal bool Uses(string exerciseId) => Steps.Any(step => step.Step.ExerciseId == exerciseId);

    internal Draft With(int index, DraftStep step) => this with { Steps = [.. Steps.Select((old, at) => at == index ? step : old)] };

    internal Draft Without(int index) => this with { Steps = [.. Steps.Where((_, at) => at != index)] };

    /// <summary>Puts a step behind the others of its stage.</summary>
    internal Draft Insert(DraftStep step) => Insert(step, stage => stage <= StageOf(step));

    /// <summary>Puts a step in front of the others of its stage.</summary>
    internal Draft InsertFirst(DraftStep step) => Insert(step, stage => stage < StageOf(step));

    private Draft Insert(DraftStep step, Func<Stage, bool> staysBefore)
    {
        int place = Steps.TakeWhile(other => staysBefore(StageOf(other))).Count();
        return this with { Steps = [.. Steps.Take(place), step, .. Steps.Skip(place)] };
    }

    private Stage StageOf(DraftStep step) => Exercises[step.Step.ExerciseId].Stage;

    private ILookup<PlanSeverity, PlanRemark> Remarks() =>
        PlanCheck.Check(Ready(), Input.Before).Open.Where(remark => remark.Rule != LengthRule).ToLookup(remark => remark.Severity);
}
