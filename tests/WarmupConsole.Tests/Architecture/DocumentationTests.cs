using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace WarmupConsole.Tests.Architecture;

/// <summary>
/// Public types and members of the two pure projects say what they mean. Overrides, operators and CompareTo are left out,
/// for their meaning is the language's, and so are the members of enums: Dorian is Dorian, the type says the rest.
/// </summary>
public class DocumentationTests
{
    private const int LeastPercent = 90;

    [Theory]
    [InlineData("src/WarmupConsole.Music")]
    [InlineData("src/WarmupConsole.Sessions")]
    public void Nine_of_ten_public_members_are_documented(string project)
    {
        (string Place, bool Documented)[] members =
        [
            .. Repository.Sources(project).SelectMany(file => file.Tree.DescendantNodes().OfType<MemberDeclarationSyntax>()
                .Where(IsPublic)
                .Select(member => (file.At(member), IsDocumented(member)))),
        ];
        string[] bare = [.. members.Where(member => !member.Documented).Select(member => member.Place)];

        Assert.True(
            bare.Length * 100 <= members.Length * (100 - LeastPercent),
            $"{bare.Length} of {members.Length} public members of {project} have no comment:\n  " + string.Join("\n  ", bare));
    }

    private static bool IsPublic(MemberDeclarationSyntax member) => member switch
    {
        BaseNamespaceDeclarationSyntax or EnumMemberDeclarationSyntax or OperatorDeclarationSyntax or ConversionOperatorDeclarationSyntax => false,
        MethodDeclarationSyntax { Identifier.ValueText: nameof(IComparable.CompareTo) } => false,
        _ => !member.Modifiers.Any(SyntaxKind.OverrideKeyword) && SaysPublic(member) && member.Ancestors().OfType<BaseTypeDeclarationSyntax>().All(SaysPublic),
    };

    private static bool SaysPublic(MemberDeclarationSyntax member) =>
        member.Parent is InterfaceDeclarationSyntax || member.Modifiers.Any(SyntaxKind.PublicKeyword);

    private static bool IsDocumented(MemberDeclarationSyntax member) => member.GetLeadingTrivia()
        .Any(trivia => trivia.IsKind(SyntaxKind.SingleLineDocumentationCommentTrivia));
}
