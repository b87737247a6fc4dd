using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Plans;

/// <summary>Reads what a plan says besides its steps: rules that it switches off, and a rehearsal without a warm-up.</summary>
internal static class PlanHeadReader
{
    internal static List<RuleOff> Off(MapReader plan)
    {
        Dictionary<string, int> lines = [];
        List<RuleOff> off = [];
        foreach (MapReader fields in plan.Maps("off"))
        {
            off.Add(new(fields.Id("rule"), fields.Text("because")));
            CheckRule(fields, off[^1].Rule);
            UniqueCheck.Add(lines, fields, "rule", off[^1].Rule);
            fields.Finish();
        }

        return off;
    }

    internal static BareRehearsal? Bare(MapReader plan)
    {
        if (plan.Map("bare") is not { } fields)
        {
            return null;
        }

        BareRehearsal bare = new(fields.YesNo("told") ?? false, fields.Text("because"));
        fields.Finish();
        if (plan.Find("steps") is { } steps)
        {
            plan.Problems.Add(steps, StorageTexts.BareWithSteps);
        }

        return bare;
    }

    private static void CheckRule(MapReader fields, string rule)
    {
        if (rule.Length > 0 && !PlanCheck.RuleNames.Contains(rule))
        {
            IReadOnlyList<string> near = Nearest.To(rule, PlanCheck.RuleNames);
            fields.Problems.Add(fields.Find("rule")!, StorageTexts.UnknownRule(rule, near.Count > 0 ? near : PlanCheck.RuleNames));
        }
    }
}
