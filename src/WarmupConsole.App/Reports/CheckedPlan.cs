using WarmupConsole.App.Running;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Plans;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Reports;

/// <summary>A plan with what its check found, and where everything stands in its file.</summary>
internal sealed class CheckedPlan
{
    private readonly PlanPlaces places;

    internal CheckedPlan(Content content, IReadOnlyList<Plan> earlier)
    {
        (Warmup, Path) = (content.Warmup, content.Plan.Path);
        Remarks = PlanCheck.Check(content.Warmup, earlier);
        places = PlanPlaces.Of(content.Plan.Yaml);
    }

    internal Warmup Warmup { get; }

    internal string Path { get; }

    internal PlanRemarks Remarks { get; }

    internal int Errors => Count(PlanSeverity.Error);

    internal int Count(PlanSeverity severity) => Remarks.Open.Count(remark => remark.Severity == severity);

    internal YamlPlace Place(PlanRemark remark) => places.Find(remark.Step, remark.Field);

    /// <summary>Why the rule of a remark is switched off; null when it is not.</summary>
    internal string? OffBecause(string rule) => Warmup.Plan.Off.FirstOrDefault(off => off.Rule == rule)?.Because;

    internal static string Word(PlanSeverity severity) => severity switch
    {
        PlanSeverity.Error => "error",
        PlanSeverity.Warning => "warning",
        _ => "hint",
    };
}
