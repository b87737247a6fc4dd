namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>No part is asked to sing beyond its extreme range.</summary>
internal sealed class BeyondExtremeRule : IPlanRule
{
    public string Name => "beyond-extreme";

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        foreach ((int index, WarmupStep step) in warmup.Steps.Index())
        {
            if (warmup.FirstNote(index, step.Ladder.Rungs, (range, note) => !range.Extreme.Contains(note.Midi)) is { } at)
            {
                yield return new(PlanSeverity.Error, Name, index, PlanTexts.BeyondExtreme(at), "keys");
            }
        }
    }
}
