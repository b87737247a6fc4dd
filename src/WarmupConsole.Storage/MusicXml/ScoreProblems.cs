using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.MusicXml;

/// <summary>Gathers what is wrong with a score, each with its place.</summary>
internal sealed class ScoreProblems(string file, string text)
{
    private const int LongestShown = 2_000;
    private readonly List<FileProblem> problems = [];

    internal IReadOnlyList<FileProblem> All => [.. problems.OrderBy(problem => problem.Line).ThenBy(problem => problem.Column)];

    /// <summary>False once notes or parts were left out.</summary>
    internal bool IsWhole { get; private set; } = true;

    /// <summary>Something to know; every note is there.</summary>
    internal void Note((int Line, int Column) place, string message)
    {
        if (problems.Count < ProblemList.Most)
        {
            problems.Add(place.Line == 0
                ? FileProblem.Whole(file, message)
                : new(file, place.Line, place.Column, 1, message, SourceLine(place.Line)));
        }
    }

    /// <summary>Something is missing from what was read.</summary>
    internal void Loss((int Line, int Column) place, string message)
    {
        IsWhole = false;
        Note(place, message);
    }

    internal void Take(IEnumerable<FileProblem> others) => problems.AddRange(others);

    /// <summary>Scores are often written in a single line; one that is too long to show is left out.</summary>
    private string SourceLine(int number)
    {
        int start = 0;
        for (int line = 1; line < number; line++)
        {
            start = text.IndexOf('\n', start) + 1;
            if (start == 0)
            {
                return "";
            }
        }

        int end = text.IndexOf('\n', start);
        ReadOnlySpan<char> shown = text.AsSpan(start, (end < 0 ? text.Length : end) - start).TrimEnd('\r');
        return shown.Length <= LongestShown ? shown.ToString() : "";
    }
}
