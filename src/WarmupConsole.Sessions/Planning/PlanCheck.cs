using WarmupConsole.Sessions.Planning.Rules;

namespace WarmupConsole.Sessions.Planning;

/// <summary>Checks a plan that was made ready for a choir: order, vowels, ranges, keys, length, variety.</summary>
public static class PlanCheck
{
    private static readonly IReadOnlyList<Plan> NoPlans = [];

    /// <summary>The rules that may find an error.</summary>
    private static readonly IPlanRule[] Strict =
    [
        new BreathFirstRule(),
        new HalfClosedFirstRule(),
        new ClosedVowelFirstRule(),
        new BeyondExtremeRule(),
        new ExtremesLateRule(),
    ];

    /// <summary>The names of all rules, in the order in which their remarks are listed within one severity.</summary>
    public static IReadOnlyList<string> RuleNames { get; } = [.. Rules(NoPlans).Select(rule => rule.Name)];

    /// <summary>The remarks, errors first; empty when there is nothing to say. An open session is never remarked on.</summary>
    public static IReadOnlyList<PlanRemark> Check(Warmup warmup) => Check(warmup, NoPlans).Open;

    /// <summary>The remarks, also on what the plans before it tell.</summary>
    /// <param name="warmup">The plan, made ready.</param>
    /// <param name="earlier">The plans before it, the oldest first; may be empty.</param>
    public static PlanRemarks Check(Warmup warmup, IReadOnlyList<Plan> earlier)
    {
        ArgumentNullException.ThrowIfNull(warmup);
        ArgumentNullException.ThrowIfNull(earlier);
        ILookup<bool, PlanRemark> byOff = Found(warmup, Rules(earlier)).ToLookup(remark => IsOff(warmup.Plan, remark.Rule));
        return new([.. byOff[false]], [.. byOff[true]]);
    }

    /// <summary>How many errors a plan has; cheaper than all remarks.</summary>
    public static int Errors(Warmup warmup) =>
        Found(warmup, Strict).Count(remark => remark.Severity == PlanSeverity.Error && !IsOff(warmup.Plan, remark.Rule));

    private static IEnumerable<PlanRemark> Found(Warmup warmup, IEnumerable<IPlanRule> rules) => rules
        .Where(rule => warmup.Steps.Count > 0 || rule is BareRehearsalRule)
        .SelectMany(rule => rule.Check(warmup))
        .OrderByDescending(remark => remark.Severity);

    private static bool IsOff(Plan plan, string rule) => plan.Off.Any(off => off.Rule == rule);

    private static IPlanRule[] Rules(IReadOnlyList<Plan> earlier) =>
    [
        .. Strict,
        new NoKeysRule(),
        new VoiceWithoutPartRule(),
        new PlannedLengthRule(),
        new BareRehearsalRule(earlier),
        new LongRestRule(),
        new EntriesAndExitsRule(),
        new RehearsalShareRule(),
        new StageOrderRule(),
        new SettleAfterPeakRule(),
        new ClosedVowelHighRule(),
        new RangeCoverageRule(),
        new PurposeCoverageRule(),
        new TalkLeftOutRule(),
        .. TrendData.Rules,
        new SamePlanRule(earlier),
        new NewExercisesRule(earlier),
    ];
}
