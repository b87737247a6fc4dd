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

    private readonly ConcurrentDictionary<string, Choir?> choirs = [];
    private readonly ConcurrentDictionary<string, IReadOnlyList<Exercise>> exercises = [];

    /// <summary>The choir, or null when it cannot be read any more.</summary>
    internal Choir? Choir(string yaml) => choirs.GetOrAdd(yaml, text => ChoirFile.Read(Place, Encoding.UTF8.GetBytes(text)).Value);

    /// <summary>The exercises; none when they cannot be read any more. Written by us, each is a block of lines of its own, that is looked up alone.</summary>
    internal IReadOnlyList<Exercise> Exercises(string yaml)
    {
        if (ExerciseBlocks.In(yaml) is not { } blocks)
        {
            return yaml.Length == 0 ? [] : Read(yaml);
        }

        List<Exercise> all = [];
        foreach (Range block in blocks)
        {
            if (Block(yaml.AsSpan(block)) is not [Exercise one])
            {
                return Read(yaml);
            }

            all.Add(one);
        }

        return all;
    }

    private IReadOnlyList<Exercise> Block(ReadOnlySpan<char> text)
    {
        var known = exercises.GetAlternateLookup<ReadOnlySpan<char>>();
        return known.TryGetValue(text, out IReadOnlyList<Exercise>? block) ? block : exercises.GetOrAdd(text.ToString(), block => Read(ExerciseBlocks.Alone(block)));
    }

    private static IReadOnlyList<Exercise> Read(string yaml) => ExerciseFile.Read(Place, Encoding.UTF8.GetBytes(yaml)).Value ?? [];
}
