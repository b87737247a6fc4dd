using System.Collections.Concurrent;
using System.Text;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Storage.Choirs;
using WarmupConsole.Storage.Exercises;

namespace WarmupConsole.App.Running;

/// <summary>
/// Choirs and exercises as logs keep them, each text read once: most logs hold the same choir and many of the same exercises, and reading them
/// is most of the work. For use by several threads at once.
/// </summary>
internal sealed class LoggedTexts
{
    internal const string Place = "session log";
    private const string Head = "format: 1\nexercises:\n";
    private const string Item = "\n  - ";

    private readonly ConcurrentDictionary<string, Choir?> choirs = [];
    private readonly ConcurrentDictionary<string, IReadOnlyList<Exercise>> exercises = [];

    /// <summary>The choir, or null when it cannot be read any more.</summary>
    internal Choir? Choir(string yaml) => choirs.GetOrAdd(yaml, text => ChoirFile.Read(Place, Encoding.UTF8.GetBytes(text)).Value);

    /// <summary>The exercises; none when they cannot be read any more. Written by us, each is a block of lines of its own, that is looked up alone.</summary>
    internal IReadOnlyList<Exercise> Exercises(string yaml)
    {
        if (!yaml.StartsWith(Head, StringComparison.Ordinal))
        {
            return yaml.Length == 0 ? [] : Read(yaml);
        }

        List<Exercise> all = [];
        for (int start = Head.Length; start < yaml.Length;)
        {
            int next = yaml.IndexOf(Item, start, StringComparison.Ordinal);
            int end = next < 0 ? yaml.Length : next + 1;
            if (Block(yaml.AsSpan(start, end - start)) is not [Exercise one])
            {
                return Read(yaml);
            }

            all.Add(one);
            start = end;
        }

        return all;
    }

    private IReadOnlyList<Exercise> Block(ReadOnlySpan<char> text)
    {
        var known = exercises.GetAlternateLookup<ReadOnlySpan<char>>();
        return known.TryGetValue(text, out IReadOnlyList<Exercise>? block) ? block : exercises.GetOrAdd(text.ToString(), block => Read(Head + block));
    }

    private static IReadOnlyList<Exercise> Read(string yaml) => ExerciseFile.Read(Place, Encoding.UTF8.GetBytes(yaml)).Value ?? [];
}
