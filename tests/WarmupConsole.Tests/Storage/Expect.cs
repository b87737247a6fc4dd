using System.Text;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Tests.Storage;

/// <summary>Shorthand for what files are expected to be told.</summary>
internal static class Expect
{
    internal static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    /// <summary>Exactly one problem, at the place of the first occurrence of a text (or of the caret within it), with a message that holds the words.</summary>
    internal static void OneProblem<T>(FileRead<T> read, string source, string at, string words)
        where T : class
    {
        FileProblem problem = Assert.Single(read.Problems);
        Assert.Contains(words, problem.Message, StringComparison.Ordinal);
        Assert.Equal(PlaceOf(source, at), (problem.Line, problem.Column));
    }

    internal static (int Line, int Column) PlaceOf(string source, string at)
    {
        int caret = Math.Max(0, at.IndexOf('^', StringComparison.Ordinal));
        int index = source.IndexOf(at.Replace("^", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.True(index >= 0, $"'{at}' is not in the source");
        string before = source[..(index + caret)];
        return (before.Count(c => c == '\n') + 1, before.Length - before.LastIndexOf('\n'));
    }
}
