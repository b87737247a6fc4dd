namespace WarmupConsole.Music.Exercises;

/// <summary>What can be true of counted phases.</summary>
internal static class PhaseRules
{
    /// <summary>Each breath out is longer than the one before, and there are two at least.</summary>
    internal static bool BreathsGrow(Exercise exercise)
    {
        int[] outs = [.. exercise.Phases.Where(phase => phase.Action == BreathAction.Out).Select(phase => phase.Counts)];
        return outs.Length > 1 && outs.Zip(outs.Skip(1)).All(pair => pair.First < pair.Second);
    }
}
