namespace WarmupConsole.Storage.Yaml;

/// <summary>The text of a file with its lines, so that a problem can show the line it stands in.</summary>
public sealed class SourceText(string file, string text)
{
    private readonly string[] lines = text.Split(["\r\n", "\n", "\r"], StringSplitOptions.None);

    public string File { get; } = file;

    public string Text { get; } = text;

    public IReadOnlyList<string> Lines => lines;

    /// <summary>A line by its number from 1, or empty when there is none.</summary>
    public string Line(int number) => number >= 1 && number <= lines.Length ? lines[number - 1] : "";

    public FileProblem Problem(YamlPlace place, string message) =>
        new(File, place.Line, place.Column, Math.Max(1, place.Length), message, Line(place.Line));
}
