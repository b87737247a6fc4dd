namespace WarmupConsole.Music.Exercises;

/// <summary>One row per loudness word: the velocity at which the piano plays it (common practice: even steps that leave room at both ends).</summary>
public static class DynamicsData
{
    private static readonly (string Word, int Velocity)[] Rows =
    [
        ("pp", 36),
        ("p", 48),
        ("mp", 58),
        ("mf", 68),
        ("f", 84),
        ("ff", 100),
    ];

    /// <summary>All words, from soft to loud.</summary>
    public static IReadOnlyList<string> Words { get; } = [.. Rows.Select(row => row.Word)];

    /// <summary>Where a word stands from soft to loud, 0 for the softest.</summary>
    /// <exception cref="ArgumentException">No such word; see <see cref="Words"/>.</exception>
    public static int Order(string word)
    {
        int row = Array.FindIndex(Rows, r => r.Word == word);
        return row >= 0 ? row : throw new ArgumentException($"'{word}' is no loudness: write one of {string.Join(", ", Words)}.", nameof(word));
    }

    /// <summary>MIDI velocity of a word, 1–127.</summary>
    /// <exception cref="ArgumentException">No such word; see <see cref="Words"/>.</exception>
    public static int Velocity(string word) => Rows[Order(word)].Velocity;

    /// <summary>Velocity within a course of words that is spread evenly; in between it grows or fades steadily.</summary>
    /// <param name="course">One word or more.</param>
    /// <param name="position">0 at the beginning, 1 at the end.</param>
    public static int VelocityAt(IReadOnlyList<string> course, double position)
    {
        double place = Math.Clamp(position, 0, 1) * (course.Count - 1);
        int before = (int)place;
        int from = Velocity(course[before]);
        int to = Velocity(course[Math.Min(before + 1, course.Count - 1)]);
        return (int)Math.Round(from + ((to - from) * (place - before)), MidpointRounding.AwayFromZero);
    }
}
