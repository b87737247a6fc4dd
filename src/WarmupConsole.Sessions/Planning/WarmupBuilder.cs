using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Planning;

/// <summary>Makes a plan ready for a choir: exercises found, tempos settled, ladders built, times reckoned.</summary>
public static class WarmupBuilder
{
    private static readonly LadderSpec AsUsual = new();

    /// <param name="choir">Who sings.</param>
    /// <param name="plan">The order; its exercises were checked to exist when it was read.</param>
    /// <param name="exercises">By id.</param>
    /// <exception cref="KeyNotFoundException">The plan names an exercise that is not among them.</exception>
    public static Warmup Build(Choir choir, Plan plan, IReadOnlyDictionary<string, Exercise> exercises)
    {
        ArgumentNullException.ThrowIfNull(choir);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(exercises);
        return new(choir, plan, [.. plan.Steps.Select(step => Step(choir, step, exercises[step.ExerciseId]))]);
    }

    /// <summary>An exercise made ready alone, as its own file has it: it is put in while another plan runs.</summary>
    public static WarmupStep Alone(Choir choir, Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(choir);
        ArgumentNullException.ThrowIfNull(exercise);
        return Step(choir, new PlanStep { ExerciseId = exercise.Id }, exercise);
    }

    /// <summary>The same for the choir of this evening: its ladders are built anew, those of put-in steps too.</summary>
    public static Warmup For(Tonight tonight, Warmup warmup)
    {
        ArgumentNullException.ThrowIfNull(tonight);
        ArgumentNullException.ThrowIfNull(warmup);
        Choir choir = tonight.Of(warmup.UsualChoir);
        return warmup with { Choir = choir, Tonight = tonight, Steps = [.. warmup.Steps.Select(step => Step(choir, step.Plan, step.Exercise))] };
    }

    private static WarmupStep Step(Choir choir, PlanStep written, Exercise exercise)
    {
        PlanStep plan = WithOwnKeys(written, exercise);
        Tempo tempo = plan.Tempo ?? exercise.Tempo.Default;
        KeyLadder ladder = exercise.IsSung ? LadderBuilder.Build(exercise, choir.Parts, plan.Keys, choir.Notes) : new([], []);
        int talk = plan.TalkSeconds ?? exercise.TalkSeconds;
        int rounds = exercise.IsSung ? 0 : plan.Rounds ?? exercise.Rounds;
        WarmupStep step = new(plan, exercise, tempo, ladder, talk, rounds, TimeSpan.Zero);
        return step with { Planned = step.Lasts(ladder.Rungs.Count) };
    }

    /// <summary>What the plan leaves open about keys and their tempos, as the exercise has it.</summary>
    private static PlanStep WithOwnKeys(PlanStep plan, Exercise exercise) => plan with
    {
        Keys = exercise.Keys is { } own && plan.Keys == AsUsual ? own : plan.Keys,
        LastTempo = plan.Tempo is null ? plan.LastTempo ?? exercise.LastTempo : plan.LastTempo,
    };
}
