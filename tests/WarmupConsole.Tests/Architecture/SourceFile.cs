using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace WarmupConsole.Tests.Architecture;

/// <summary>One parsed C# file.</summary>
internal sealed record SourceFile(string Path, int Lines, CompilationUnitSyntax Tree)
{
    /// <summary>Methods, constructors, operators and local functions that have a body.</summary>
    internal IEnumerable<SyntaxNode> Methods => Tree.DescendantNodes().Where(HasBody);

    /// <summary>Types that stand in no other type.</summary>
    internal IEnumerable<MemberDeclarationSyntax> TopLevelTypes => Tree.DescendantNodes()
        .OfType<MemberDeclarationSyntax>()
        .Where(node => node is BaseTypeDeclarationSyntax or DelegateDeclarationSyntax && node.Parent is not TypeDeclarationSyntax);

    internal static SourceFile Read(string path)
    {
        string text = Repository.Text(path);
        var tree = (CompilationUnitSyntax)CSharpSyntaxTree.ParseText(text).GetRoot();
        return new(path, text.AsSpan().TrimEnd('\n').Count('\n') + 1, tree);
    }

    /// <summary>How many lines a node takes, without the comment above it.</summary>
    internal static int LinesOf(SyntaxNode node)
    {
        FileLinePositionSpan span = node.GetLocation().GetLineSpan();
        return span.EndLinePosition.Line - span.StartLinePosition.Line + 1;
    }

    /// <summary>The place of a node, as an editor can jump to.</summary>
    internal string At(SyntaxNode node) => At(node.GetLocation());

    /// <inheritdoc cref="At(SyntaxNode)"/>
    internal string At(Location location) => $"{Path}:{location.GetLineSpan().StartLinePosition.Line + 1}";

    private static bool HasBody(SyntaxNode node) => node switch
    {
        BaseMethodDeclarationSyntax method => method.Body is not null || method.ExpressionBody is not null,
        LocalFunctionStatementSyntax function => function.Body is not null || function.ExpressionBody is not null,
        _ => false,
    };
}
