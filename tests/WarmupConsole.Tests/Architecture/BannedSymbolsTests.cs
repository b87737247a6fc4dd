using System.Xml.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace WarmupConsole.Tests.Architecture;

/// <summary>The calls that the compiler refuses (RS0030): the lists are wired in, and each line bans something that exists.</summary>
public class BannedSymbolsTests
{
    private static readonly XDocument Targets = XDocument.Load(Path.Combine(Repository.Root, "src/Directory.Build.targets"));

    public static TheoryData<string> Lists => ["BannedSymbols.txt", "BannedSymbols.Pure.txt"];

    [Fact]
    public void A_banned_call_is_an_error() =>
        Assert.Contains("dotnet_diagnostic.RS0030.severity = error", Repository.Text(".editorconfig"), StringComparison.Ordinal);

    [Fact]
    public void Every_project_in_src_gets_the_analyzer_and_the_list_for_all()
    {
        Assert.Null(ConditionOf("PackageReference", "Microsoft.CodeAnalysis.BannedApiAnalyzers"));
        Assert.Null(ConditionOf("AdditionalFiles", "$(MSBuildThisFileDirectory)BannedSymbols.txt"));
        Assert.Null(ConditionOf("AdditionalFiles", "$(MSBuildThisFileDirectory)CodeMetricsConfig.txt"));
    }

    [Fact]
    public void The_pure_list_holds_for_Music_and_Sessions_and_no_other() =>
        Assert.Equal(
            "'$(MSBuildProjectName)' == 'WarmupConsole.Music' or '$(MSBuildProjectName)' == 'WarmupConsole.Sessions'",
            ConditionOf("AdditionalFiles", "$(MSBuildThisFileDirectory)BannedSymbols.Pure.txt"));

    [Theory]
    [MemberData(nameof(Lists))]
    public void Each_line_names_something_that_exists_and_what_to_do_instead(string list)
    {
        string platform = (string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!;
        CSharpCompilation compilation = CSharpCompilation.Create("names", references: platform.Split(Path.PathSeparator).Select(path => MetadataReference.CreateFromFile(path)));

        Offenders.None($"lines of {list} that ban nothing or offer nothing", Repository.Text($"src/{list}")
            .Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Where(line => !Bans(compilation, line.Split(';'))));
    }

    [Fact]
    public void No_source_switches_the_ban_off() =>
        Offenders.None("sources that switch a ban or the complexity limit off", Repository.Sources("src")
            .SelectMany(file => file.Tree.DescendantTrivia()
                .Where(trivia => trivia.IsKind(SyntaxKind.PragmaWarningDirectiveTrivia) && SwitchesOff(trivia.ToString()))
                .Select(trivia => file.At(trivia.GetLocation()))));

    private static bool SwitchesOff(string pragma) =>
        pragma.Contains("RS0030", StringComparison.Ordinal) || pragma.Contains("CA1502", StringComparison.Ordinal);

    private static bool Bans(Compilation compilation, string[] line) =>
        line is [string id, { Length: > 0 }] && DocumentationCommentId.GetFirstSymbolForDeclarationId(id, compilation) is not null;

    private static string? ConditionOf(string element, string include)
    {
        XElement entry = Targets.Descendants(element).Single(e => (string?)e.Attribute("Include") == include);
        return (string?)entry.Attribute("Condition") ?? (string?)entry.Parent!.Attribute("Condition");
    }
}
