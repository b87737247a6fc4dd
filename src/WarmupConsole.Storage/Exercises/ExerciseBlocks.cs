namespace WarmupConsole.Storage.Exercises;

/// <summary>A file of exercises as the program writes it, cut into blocks of one exercise each; so one can be read without the others.</summary>
public static class ExerciseBlocks
{
    private const string Head = "format: 1\nexercises:\n";
    private const string Item = "\n  - ";
    private const string Id = "  - id: ";

    /// <summary>Where each exercise stands in the text; null when it is laid out in another way, as a file of one's own may be.</summary>
    public static IReadOnlyList<Range>? In(string yaml)
    {
        ArgumentNullException.ThrowIfNull(yaml);
        if (!yaml.StartsWith(Head, StringComparison.Ordinal))
        {
            return null;
        }

        List<Range> blocks = [];
        for (int start = Head.Length; start < yaml.Length;)
        {
            int next = yaml.IndexOf(Item, start, StringComparison.Ordinal);
            int end = next < 0 ? yaml.Length : next + 1;
            blocks.Add(start..end);
            start = end;
        }

        return blocks;
    }

    /// <summary>A block as a file of its own.</summary>
    public static string Alone(string block) => Head + block;

    /// <summary>The id that a block begins with; empty when it begins with anything else.</summary>
    internal static string IdOf(ReadOnlySpan<char> block) =>
        block.StartsWith(Id, StringComparison.Ordinal) && block.IndexOf('\n') is > 0 and var end ? block[Id.Length..end].ToString() : "";
}
