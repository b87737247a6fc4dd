using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Planning.Editing;

/// <summary>A plan while it is edited: its steps, where each came from, and which one is looked at. A value: each method returns the next one.</summary>
public sealed record PlanDraft
{
    private readonly IReadOnlyDictionary<string, Exercise> _exercises;

    private PlanDraft(Choir choir, Plan plan, IReadOnlyList<int?> origins, IReadOnlyDictionary<string, Exercise> exercises, int selected)
    {
        (_exercises, Origins) = (exercises, origins);
        Warmup = WarmupBuilder.Build(choir, plan, exercises);
        Selected = Math.Clamp(selected, 0, Math.Max(0, plan.Steps.Count - 1));
    }

    /// <summary>The plan made ready.</summary>
    public Warmup Warmup { get; }

    /// <summary>For each step the index it had in the file, or null for a new one.</summary>
    public IReadOnlyList<int?> Origins { get; }

    /// <summary>Index of the step that is looked at; 0 without any.</summary>
    public int Selected { get; }

    /// <summary>The step that is looked at, or null without any.</summary>
    public WarmupStep? Step => Selected < Warmup.Steps.Count ? Warmup.Steps[Selected] : null;

    /// <param name="choir">Who sings.</param>
    /// <param name="plan">As its file has it.</param>
    /// <param name="exercises">All that may be used, by id.</param>
    public static PlanDraft Of(Choir choir, Plan plan, IReadOnlyDictionary<string, Exercise> exercises)
    {
        ArgumentNullException.ThrowIfNull(choir);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(exercises);
        return new(choir, plan, [.. plan.Steps.Select((_, index) => (int?)index)], exercises, 0);
    }

    /// <summary>Looks at another step.</summary>
    public PlanDraft Select(int index) => With(Steps, Origins, index);

    /// <summary>The step goes so many places down; the same at an end.</summary>
    public PlanDraft Move(int by)
    {
        int to = Selected + by;
        return Step is null || to < 0 || to >= Steps.Count ? this : With(Swapped(Steps, Selected, to), Swapped(Origins, Selected, to), to);
    }

    /// <summary>Without the step.</summary>
    public PlanDraft Remove() => Step is null ? this : With(Without(Steps, Selected), Without(Origins, Selected), Selected);

    /// <summary>With an exercise behind the step, as its own file has it; it is looked at.</summary>
    public PlanDraft Insert(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        int at = Steps.Count == 0 ? 0 : Selected + 1;
        return With([.. Steps.Take(at), new() { ExerciseId = exercise.Id }, .. Steps.Skip(at)], [.. Origins.Take(at), null, .. Origins.Skip(at)], at);
    }

    /// <summary>Another exercise in the step's place. Its keys stay where both are sung; tempo, talk, rounds and reasons were the other's.</summary>
    public PlanDraft Replace(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return Step is not { } step ? this : Change(step.Exercise.IsSung && exercise.IsSung
            ? new() { ExerciseId = exercise.Id, Keys = step.Plan.Keys with { Start = null } }
            : new() { ExerciseId = exercise.Id });
    }

    /// <summary>One field of the step a notch further.</summary>
    public PlanDraft Change(StepField field, int by) => Step is { } step ? Change(StepFields.Changed(step, field, by, Warmup.Choir)) : this;

    private IReadOnlyList<PlanStep> Steps => Warmup.Plan.Steps;

    private PlanDraft Change(PlanStep step) => step == Steps[Selected] ? this : With([.. Steps.Take(Selected), step, .. Steps.Skip(Selected + 1)], Origins, Selected);

    private PlanDraft With(IReadOnlyList<PlanStep> steps, IReadOnlyList<int?> origins, int selected) =>
        new(Warmup.Choir, Warmup.Plan with { Steps = steps }, origins, _exercises, selected);

    private static T[] Without<T>(IReadOnlyList<T> all, int index) => [.. all.Where((_, at) => at != index)];

    private static T[] Swapped<T>(IReadOnlyList<T> all, int a, int b)
    {
        T[] next = [.. all];
        (next[a], next[b]) = (next[b], next[a]);
        return next;
    }
}
