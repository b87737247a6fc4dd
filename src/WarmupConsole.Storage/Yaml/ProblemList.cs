namespace WarmupConsole.Storage.Yaml;

/// <summary>Gathers what is wrong with one file, so that all of it is told at once.</summary>
public sealed class ProblemList(SourceText source)
{
    /// <summary>More than this is told for no file: who reads a hundred has another problem.</summary>
    public const int Most = 100;

    private readonly List<FileProblem> problems = [];

    public IReadOnlyList<FileProblem> All => [.. problems.OrderBy(p => p.Line).ThenBy(p => p.Column)];

    public int Count => problems.Count;

    public SourceText Source { get; } = source;

    public void Add(YamlPlace place, string message)
    {
        if (problems.Count < Most)
        {
            problems.Add(Source.Problem(place, message));
        }
    }

    public void Add(YamlNode node, string message) => Add(node.Place, message);

    /// <summary>The value when nothing was wrong, else all that was.</summary>
    public FileRead<T> Finish<T>(T? value)
        where T : class => problems.Count == 0 ? new(value, []) : new(null, All);
}
