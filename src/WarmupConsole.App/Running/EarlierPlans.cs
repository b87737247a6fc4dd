using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Running;

/// <summary>The plans of a choir before a day.</summary>
/// <param name="Plans">The dated ones that could be read, the oldest first.</param>
/// <param name="Problems">What is wrong with the others.</param>
internal sealed record EarlierPlans(IReadOnlyList<Plan> Plans, IReadOnlyList<FileProblem> Problems)
{
    /// <summary>Half a year of weeks: older plans say nothing about habits.</summary>
    private const int MostFiles = 26;

    /// <summary>Those dated before the plan; without a date of its own, all others.</summary>
    internal static EarlierPlans Before(ChoirFolder folder, LoadedPlan plan)
    {
        string own = Path.GetFullPath(plan.Path.Length == 0 ? folder.Root : plan.Path);
        FileRead<LoadedPlan>[] read = [.. folder.PlanPaths.Where(path => Path.GetFullPath(path) != own).TakeLast(MostFiles).Select(folder.ReadPlan)];
        IEnumerable<Plan> plans = read.Select(one => one.Value?.Plan).OfType<Plan>()
            .Where(other => other.Date is { } date && (plan.Plan.Date is null || date < plan.Plan.Date))
            .OrderBy(other => other.Date);
        return new([.. plans], [.. read.SelectMany(one => one.Problems)]);
    }
}
