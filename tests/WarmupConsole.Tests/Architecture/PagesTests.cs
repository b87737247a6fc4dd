using System.Reflection;
using System.Text.RegularExpressions;

namespace WarmupConsole.Tests.Architecture;

/// <summary>What the written pages point at is there.</summary>
public partial class PagesTests
{
    private static readonly string[] Pages =
    [
        .. Directory.EnumerateFiles(Repository.Root, "*.md"),
        .. Directory.EnumerateFiles(Path.Combine(Repository.Root, "docs"), "*.md", SearchOption.AllDirectories),
    ];

    [Fact]
    public void Every_link_within_the_tree_leads_to_a_file() => Offenders.None(
        "links without a file",
        from page in Pages
        from Match link in Link().Matches(File.ReadAllText(page))
        let target = Path.Combine(Path.GetDirectoryName(page)!, link.Groups[1].Value)
        where !link.Groups[1].Value.Contains("://", StringComparison.Ordinal) && !Path.Exists(target)
        select $"{Path.GetRelativePath(Repository.Root, page)}: {link.Groups[1].Value}");

    [Fact]
    public void Every_test_that_the_page_on_reliability_names_exists()
    {
        HashSet<string> tests = [.. typeof(PagesTests).Assembly.GetTypes().SelectMany(type => type.GetMethods()
            .Where(method => method.GetCustomAttributes<FactAttribute>().Any())
            .Select(method => $"{type.Name}.{method.Name}"))];
        MatchCollection named = NamedTest().Matches(Repository.Text("docs/reliability.md"));
        Assert.NotEmpty(named);
        Offenders.None("tests that are named and are not there", named.Select(match => match.Groups[1].Value).Where(name => !tests.Contains(name)));
    }

    [GeneratedRegex(@"\]\(([^)#\s]+)")]
    private static partial Regex Link();

    [GeneratedRegex(@"`(\w+Tests\.\w+|\w+Scenarios\.\w+)`")]
    private static partial Regex NamedTest();
}
