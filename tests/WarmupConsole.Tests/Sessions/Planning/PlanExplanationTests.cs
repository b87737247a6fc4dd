using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Next;

namespace WarmupConsole.Tests.Sessions.Planning;

public sealed class PlanExplanationTests
{
    private static readonly NextPlanInput Input = Evenings.Usual with { Findings = [Evenings.Finding("alto", "flat", "B4")] };

    [Fact]
    public void A_proposed_plan_is_explained_with_its_own_points_and_no_exchange_is_better()
    {
        NextPlanResult next = NextPlan.From(Input);
        PlanExplanation explained = PlanExplanation.Of(Input, next.Plan);
        Assert.Equal((next.Value, next.Value), (explained.Value, explained.Best));
        Assert.Equal(next.Plan.Steps.Select(step => (long)step.Value!), explained.Steps.Select(step => Math.Max(0, step.Value)));
        Assert.All(explained.Steps, step => Assert.Equal(step.Value, step.Parts.Sum(part => part.Points)));
        Assert.All(explained.Steps, step => Assert.True(step.Other.Length > 0 ? step.Loss >= 0 : step.Loss == 0, $"{step.Title}: {step.Other} {step.Loss}"));
        Assert.True(explained.Steps.Count(step => step.Other.Length > 0) > explained.Steps.Count / 2);
        Assert.Contains(explained.Steps.SelectMany(step => step.Parts), part => part.Words.StartsWith("altos flat on B4", StringComparison.Ordinal));
    }

    [Fact]
    public void A_plan_made_by_hand_is_explained_and_may_lose_to_the_proposal()
    {
        PlanExplanation explained = PlanExplanation.Of(Input, Input.Last! with { Steps = [.. Input.Last.Steps, new() { ExerciseId = "gone" }] });
        Assert.Equal(Input.Last.Steps.Count, explained.Steps.Count);
        Assert.True(explained.Value < explained.Best);
    }

    [Theory]
    [InlineData(7, null)]
    [InlineData(8, -20)]
    [InlineData(9, -40)]
    public void A_ladder_of_more_than_seven_different_keys_is_worth_less(int keys, int? points)
    {
        PlanStep step = new() { ExerciseId = "hum-home-and-fifth", Keys = new() { Start = Pitch.Parse("A3"), ReachPercent = 100, MostKeys = keys } };
        (int Points, string Words)[] parts = [.. PlanExplanation.Of(Input, new() { Steps = [step] }).Steps[0].Parts];
        Assert.Contains((40, "keys of its ladder"), parts);
        Assert.Equal(points, parts.Where(part => part.Words == "a long ladder").Select(part => (int?)part.Points).SingleOrDefault());
    }
}
