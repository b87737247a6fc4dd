using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace WarmupConsole.Tests.Architecture;

/// <summary>Hard limits that hold for every file in src and tests. (Complexity is the compiler's: CA1502.)</summary>
public class TidyTests
{
    private const int MostLinesOfFile = 400;
    private const int MostLinesOfMethod = 60;
    private const int MostParameters = 5;

    private static readonly string[] LeftoverWords = ["TODO", "FIXME", "XXX", "HACK"];
    private static readonly string[] Sleeps = ["Thread.Sleep", "Task.Delay"];
    private static readonly IReadOnlyList<SourceFile> All = [.. Repository.Sources("src"), .. Repository.Sources("tests")];

    [Fact]
    public void No_file_is_longer_than_400_lines() =>
        Offenders.None("files that are too long", All
            .Where(file => file.Lines > MostLinesOfFile)
            .Select(file => $"{file.Path}: {file.Lines} lines"));

    [Fact]
    public void No_method_is_longer_than_60_lines() =>
        Offenders.None("methods that are too long", Each(file => file.Methods
            .Where(method => SourceFile.LinesOf(method) > MostLinesOfMethod)
            .Select(method => $"{file.At(method)}: {SourceFile.LinesOf(method)} lines")));

    [Fact]
    public void No_method_of_the_product_takes_more_than_5_parameters_but_a_record_may() =>
        Offenders.None("too many parameters", Repository.Sources("src").SelectMany(file => file.Tree.DescendantNodes().OfType<ParameterListSyntax>()
            .Where(list => list.Parameters.Count > MostParameters && list.Parent is not RecordDeclarationSyntax)
            .Select(list => $"{file.At(list)}: {list.Parameters.Count} parameters")));

    [Fact]
    public void Nothing_is_left_for_later() =>
        Offenders.None("leftovers", Each(file => Comments(file)
            .Where(comment => LeftoverWords.Any(word => comment.ToString().Contains(word, StringComparison.Ordinal)))
            .Select(comment => file.At(comment.GetLocation()))
            .Concat(Names(file).Where(name => name.ToString() == nameof(NotImplementedException)).Select(file.At))));

    [Fact]
    public void No_test_sleeps() =>
        Offenders.None("sleeps", Each(file => file.Tree.DescendantNodes().OfType<MemberAccessExpressionSyntax>()
            .Where(access => Sleeps.Any(sleep => access.ToString().EndsWith(sleep, StringComparison.Ordinal)))
            .Select(file.At)));

    private static IEnumerable<string> Each(Func<SourceFile, IEnumerable<string>> offendersOf) => All.SelectMany(offendersOf);

    private static IEnumerable<IdentifierNameSyntax> Names(SourceFile file) => file.Tree.DescendantNodes()
        .OfType<IdentifierNameSyntax>()
        .Where(name => name.Parent is ObjectCreationExpressionSyntax or QualifiedNameSyntax);

    private static IEnumerable<SyntaxTrivia> Comments(SourceFile file) => file.Tree.DescendantTrivia().Where(trivia =>
        trivia.Kind() is SyntaxKind.SingleLineCommentTrivia or SyntaxKind.MultiLineCommentTrivia
            or SyntaxKind.SingleLineDocumentationCommentTrivia or SyntaxKind.MultiLineDocumentationCommentTrivia);
}
