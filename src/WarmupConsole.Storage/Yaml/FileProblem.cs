namespace WarmupConsole.Storage.Yaml;

/// <summary>One thing wrong with a file: where, what, and the line it stands in.</summary>
/// <param name="File">The file as the director named it.</param>
/// <param name="Line">From 1; 0 when the whole file is meant (missing, unreadable, too large).</param>
/// <param name="Column">From 1, in characters; 0 when the whole file is meant.</param>
/// <param name="Length">How many characters are meant, at least 1.</param>
/// <param name="Message">What is wrong, what is allowed, what to do; one sentence or two.</param>
/// <param name="SourceLine">The line it stands in, or empty.</param>
public sealed record FileProblem(string File, int Line, int Column, int Length, string Message, string SourceLine)
{
    private const int WidestExcerpt = 160;

    /// <summary>A problem with the file as a whole.</summary>
    public static FileProblem Whole(string file, string message) => new(file, 0, 0, 1, message, "");

    /// <summary><c>file:line:column: message</c>, without the source line.</summary>
    public string Headline => Printable.Line(Line == 0 ? $"{File}: {Message}" : $"{File}:{Line}:{Column}: {Message}");

    /// <summary>The headline, then the source line with the place marked under it. Control characters of the file are never echoed.</summary>
    public override string ToString() => Line == 0 || SourceLine.Length == 0 ? Headline : $"{Headline}\n{Excerpt()}";

    private string Excerpt()
    {
        int start = Math.Clamp(Column - 1, 0, SourceLine.Length);
        int from = Math.Max(0, start - (WidestExcerpt / 2));
        string shown = SourceLine.Substring(from, Math.Min(WidestExcerpt, SourceLine.Length - from));
        int marked = Math.Clamp(Length, 1, Math.Max(1, shown.Length - (start - from)));
        return $"  {Printable.Line(shown)}\n  {new string(' ', start - from)}{new string('^', marked)}";
    }
}
