using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Sessions.Findings.Exposure;

/// <summary>
/// What decides which lines a rung asks for: exercise, key, and who sang from where to where. Choir and exercise are compared as
/// objects: what one text says is read once.
/// </summary>
internal readonly struct RungAsked(Choir choir, Exercise? exercise, string id, RungStarted rung) : IEquatable<RungAsked>
{
    internal Choir Choir => choir;

    internal Exercise? Exercise => exercise;

    internal string Id => id;

    internal RungStarted Rung => rung;

    public bool Equals(RungAsked other) => ReferenceEquals(choir, other.Choir) && ReferenceEquals(exercise, other.Exercise) && rung.Midi == other.Rung.Midi && id == other.Id
        && IsSame(rung.Sing, other.Rung.Sing) && IsSame(rung.Low, other.Rung.Low) && IsSame(rung.High, other.Rung.High);

    public override bool Equals(object? obj) => obj is RungAsked other && Equals(other);

    public override int GetHashCode() => HashCode.Combine(System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(exercise), id.Length, rung.Midi, rung.Sing.Count, Sum(rung.Low), Sum(rung.High));

    /// <summary>Equal lists of a log are most often one list: they are read once.</summary>
    private static bool IsSame<T>(IReadOnlyList<T> one, IReadOnlyList<T> other) => ReferenceEquals(one, other) || one.SequenceEqual(other);

    private static int Sum(IReadOnlyList<int> numbers)
    {
        int sum = 0;
        for (int i = 0; i < numbers.Count; i++)
        {
            sum = (sum * 31) + numbers[i];
        }

        return sum;
    }
}
