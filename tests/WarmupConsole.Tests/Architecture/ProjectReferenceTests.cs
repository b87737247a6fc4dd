using System.Xml.Linq;

namespace WarmupConsole.Tests.Architecture;

/// <summary>The directions of the house: who may know whom, and which packages each project may use.</summary>
public class ProjectReferenceTests
{
    /// <summary>Project, the projects it references, its packages; the order is that of the alphabet.</summary>
    public static TheoryData<string, string, string> Directions => new()
    {
        { "Music", "", "" },
        { "Sessions", "Music", "MathNet.Numerics Stateless" },
        { "Midi", "Music", "NAudio.Midi NAudio.WinMM" },
        { "Storage", "Music Sessions", "System.IO.Hashing YamlDotNet" },
        { "Tui", "Music Sessions", "Terminal.Gui" },
        { "App", "Midi Music Sessions Storage Tui", "System.CommandLine" },
    };

    [Theory]
    [MemberData(nameof(Directions))]
    public void A_project_references_exactly_what_its_row_says(string project, string projects, string packages)
    {
        XDocument file = Read($"src/WarmupConsole.{project}/WarmupConsole.{project}.csproj");

        Assert.Equal(projects, Names(file, "ProjectReference", path => Path.GetFileNameWithoutExtension(path.Replace('\\', '/')).Replace("WarmupConsole.", "", StringComparison.Ordinal)));
        Assert.Equal(packages, Names(file, "PackageReference", name => name));
    }

    [Fact]
    public void The_tests_reference_every_project_one_by_one()
    {
        XDocument file = Read("tests/WarmupConsole.Tests/WarmupConsole.Tests.csproj");

        Assert.Equal("App Midi Music Sessions Storage Tui", Names(file, "ProjectReference", path => Path.GetFileNameWithoutExtension(path).Replace("WarmupConsole.", "", StringComparison.Ordinal)));
    }

    [Fact]
    public void Every_folder_in_src_has_a_row()
    {
        IEnumerable<string> folders = Directory.EnumerateDirectories(Path.Combine(Repository.Root, "src")).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal);
        IEnumerable<string> rows = Directions.Select(row => $"WarmupConsole.{row.Data.Item1}").Order(StringComparer.Ordinal);

        Assert.Equal(rows, folders);
    }

    [Fact]
    public void A_project_sees_only_what_its_own_file_lists() =>
        Assert.Equal("true", Read("Directory.Build.props").Descendants("DisableTransitiveProjectReferences").Single().Value);

    private static XDocument Read(string path) => XDocument.Load(Path.Combine(Repository.Root, path));

    private static string Names(XDocument file, string element, Func<string, string> name) =>
        string.Join(' ', file.Descendants(element).Select(e => name((string)e.Attribute("Include")!)).Order(StringComparer.Ordinal));
}
