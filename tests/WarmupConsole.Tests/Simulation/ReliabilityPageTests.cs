using System.Reflection;
using System.Text.RegularExpressions;
using WarmupConsole.Tests.Architecture;

namespace WarmupConsole.Tests.Simulation;

/// <summary>docs/reliability.md promises nothing that no test shows.</summary>
public partial class ReliabilityPageTests
{
    private const string Page = "docs/reliability.md";

    private static readonly string[] Rows = [.. Repository.Text(Page).Split('\n').Where(line => line.StartsWith("| ", StringComparison.Ordinal)).Skip(2)];

    [Fact]
    public void Every_fault_names_a_test() =>
        Assert.All(Rows, row => Assert.True(Names().IsMatch(row.Split('|')[^2]), row));

    [Fact]
    public void Every_test_named_exists()
    {
        HashSet<string> known = [.. typeof(ReliabilityPageTests).Assembly.GetTypes().SelectMany(Tests)];
        string[] named = [.. Rows.SelectMany(row => Names().Matches(row)).Select(match => match.Groups[1].Value)];
        Assert.NotEmpty(named);
        Offenders.None($"tests named in {Page} that do not exist", named.Where(name => !known.Contains(name)));
    }

    private static IEnumerable<string> Tests(Type type) => type.GetMethods(BindingFlags.Public | BindingFlags.Instance)
        .Where(method => method.GetCustomAttributes<FactAttribute>().Any())
        .Select(method => $"{type.Name}.{method.Name}");

    [GeneratedRegex(@"`(\w+\.\w+)`")]
    private static partial Regex Names();
}
