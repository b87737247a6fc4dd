using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Tests.Sessions.Marks;

namespace WarmupConsole.Tests.Sessions.Planning;

/// <summary>Plans out of <see cref="SampleExercises"/>, and plans made ready.</summary>
internal static class SamplePlans
{
    /// <summary>About a quarter of an hour in good order.</summary>
    internal static Plan Calm { get; } = Of(15, "shoulder-rolls", "counted-breath", "hum-thirds", "trill-fifth", "five-note-scale", "thirds-climb", "arpeggio", "sighing-hum");

    internal static Plan Of(int minutes, params string[] exercises) => new()
    {
        Date = new(2027, 2, 16),
        Title = "A calm quarter of an hour",
        Minutes = minutes,
        Steps = [.. exercises.Select(id => new PlanStep { ExerciseId = id })],
    };

    internal static Warmup Ready(Plan plan) => Ready(SampleChoir.Four, plan);

    internal static Warmup Ready(Choir choir, Plan plan) => new(choir, plan, [.. plan.Steps.Select(step => Ready(choir, step))]);

    /// <summary>The keys of one step replaced.</summary>
    internal static Plan WithKeys(this Plan plan, int step, LadderSpec keys) => plan with
    {
        Steps = [.. plan.Steps.Select((old, index) => index == step ? old with { Keys = keys } : old)],
    };

    private static WarmupStep Ready(Choir choir, PlanStep step)
    {
        Exercise exercise = SampleExercises.All[step.ExerciseId];
        KeyLadder ladder = LadderBuilder.Build(exercise, choir.Parts, step.Keys);
        int rounds = exercise.IsSung ? 0 : step.Rounds ?? exercise.Rounds;
        TimeSpan planned = StepTiming.Step(exercise, exercise.Tempo.Default, exercise.TalkSeconds, ladder.Rungs.Count, rounds, step.BreathBeats);
        return new(step, exercise, exercise.Tempo.Default, ladder, exercise.TalkSeconds, rounds, planned);
    }
}
