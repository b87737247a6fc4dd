using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Needs that no ladder is made for: they are weighed against the finished plan.</summary>
internal static class WishedFor
{
    /// <summary>A sentence for each purpose that no exercise serves, each region that a part does not sing through, and each pitch that none of its parts has.</summary>
    internal static IEnumerable<string> NotServed(NextPlanInput input, Warmup plan) => input.Needs
        .Where(need => need.IsOpenOn(input.Date) && !IsServed(need, plan))
        .Select(need => NextPlanTexts.NotServed(need, input.Choir.Notes));

    private static bool IsServed(ChoirNeed need, Warmup plan) => need switch
    {
        { Purpose: { } purpose } => plan.Steps.Any(step => step.Exercise.Purposes.Contains(purpose)),
        { Region: { } region } => PartCoverage.Of(plan)
            .Where(part => need.PartsOf([part.Part]).Any())
            .All(part => part.Reached is { } reached && reached.Contains(region)),
        { Pitch: Pitch pitch } => need.PartsOf(plan.Choir.Parts).Any(part => part.Range.Extreme.Contains(pitch.Midi)),
        _ => true,
    };
}
