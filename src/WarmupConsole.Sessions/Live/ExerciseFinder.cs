using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Live;

/// <summary>Exercises by a few letters of their names, or by what they train.</summary>
public static class ExerciseFinder
{
    /// <summary>Each word must begin a word of the title, the id, the stage or a purpose. Titles that begin so come first, then titles with such a word.</summary>
    /// <param name="typed">The letters; none finds nothing.</param>
    /// <param name="exercises">The catalogue and the choir's own.</param>
    /// <param name="most">No more than so many.</param>
    public static IReadOnlyList<Exercise> Find(string typed, IEnumerable<Exercise> exercises, int most)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(exercises);
        string[] words = Words(typed);
        return words.Length == 0 ? [] :
        [
            .. exercises.Where(exercise => words.All(word => Begins(All(exercise), word)))
                .OrderBy(exercise => exercise.Title.StartsWith(words[0], StringComparison.OrdinalIgnoreCase) ? 0 : words.All(word => Begins(Words(exercise.Title), word)) ? 1 : 2)
                .Take(most),
        ];
    }

    private static string[] All(Exercise exercise) => Words(string.Join(
        ' ',
        [exercise.Title, exercise.Id, StageData.Words(exercise.Stage), .. exercise.Purposes.Select(PurposeData.Id), .. exercise.Purposes.Select(PurposeData.Words)]));

    private static bool Begins(string[] words, string letters) => Array.Exists(words, word => word.StartsWith(letters, StringComparison.OrdinalIgnoreCase));

    private static string[] Words(string text) => text.Split([' ', '-', '.', ',', '/'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
