
namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Steps made ready, each only once: a proposal tries the same steps again and again.</summary>
internal sealed class ReadySteps(NextPlanInput input)
{
    private readonly Dictionary<PlanStep, WarmupStep> ready = [];

    internal WarmupStep Of(PlanStep step)
    {
        PlanStep key = step with { Because = [] };
        if (!ready.TryGetValue(key, out WarmupStep? made))
        {
            made = WarmupBuilder.Build(input.Choir, input.Last with { Steps = [key] }, input.Exercises).Steps[0];
            ready.Add(key, made);
        }

        return made with { Plan = step };
    }
}
