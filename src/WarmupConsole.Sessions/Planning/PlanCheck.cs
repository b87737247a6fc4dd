using WarmupConsole.Sessions.Planning.Rules;

namespace WarmupConsole.Sessions.Planning;

/// <summary>Checks a plan that was made ready for a choir: order, vowels, ranges, keys, length.</summary>
public static class PlanCheck
{
    /// <summary>All rules, in the order in which their remarks are listed within one severity.</summary>
    internal static IReadOnlyList<IPlanRule> Rules { get; } =
    [
        new BreathFirstRule(),
        new HalfClosedFirstRule(),
        new ClosedVowelFirstRule(),
        new BeyondExtremeRule(),
        new ExtremesLateRule(),
        new NoKeysRule(),
        new PlannedLengthRule(),
        new RehearsalShareRule(),
        new StageOrderRule(),
    ];

    /// <summary>The remarks, errors first; empty when there is nothing to say. A plan without steps (an open session) is never remarked on.</summary>
    public static IReadOnlyList<PlanRemark> Check(Warmup warmup)
    {
        ArgumentNullException.ThrowIfNull(warmup);
        return warmup.Steps.Count == 0 ? [] : [.. Rules.SelectMany(rule => rule.Check(warmup)).OrderByDescending(remark => remark.Severity)];
    }
}
