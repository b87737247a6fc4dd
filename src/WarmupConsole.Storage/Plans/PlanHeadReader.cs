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
        foreach (YamlNode node in plan.OptionalItems("off", PlanWords.Off))
        {
            if (MapReader.Over(node, "a rule that is off", plan.Problems) is { } fields)
            {
                off.Add(new(fields.Id("rule"), fields.Text("because")));
                CheckRule(fields, off[^1].Rule);
                UniqueCheck.Add(lines, fields, "rule", off[^1].Rule);
                fields.Finish();
            }
        }

        return off;
    }

    internal static BareRehearsal? Bare(MapReader plan)
    {
        if (plan.Optional("bare") is not { } node || MapReader.Over(node, "'bare'", plan.Problems) is not { } fields)
        {
            return null;
        }

        BareRehearsal bare = new(fields.YesNo("told") ?? false, fields.Text("because"));
        fields.Finish();
        if (plan.Optional("steps") is { } steps)
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
            fields.Problems.Add(fields.Optional("rule")!, StorageTexts.UnknownRule(rule, near.Count > 0 ? near : PlanCheck.RuleNames));
        }
    }
}
