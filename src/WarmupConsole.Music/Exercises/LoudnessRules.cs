namespace WarmupConsole.Music.Exercises;

/// <summary>What can be true of a course of loudness, 0 for the softest word.</summary>
internal static class LoudnessRules
{
    private const int Enough = 2;

    internal static bool Grows(IReadOnlyList<int> course) =>
        course[^1] - course[0] >= Enough && course.Zip(course.Skip(1)).All(pair => pair.First <= pair.Second);

    internal static bool Swells(IReadOnlyList<int> course) =>
        course.Max() - course[0] >= Enough && course.Max() - course[^1] >= Enough;
}
