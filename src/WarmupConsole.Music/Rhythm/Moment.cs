namespace WarmupConsole.Music.Rhythm;

/// <summary>
/// A point on the monotonic clock, in nanoseconds since an arbitrary start (the machine's boot, as a rule).
/// It is for measuring and playing; it never goes backwards and has nothing to do with the date.
/// Both processes of the console read the same clock, so a moment means the same in each.
/// </summary>
public readonly record struct Moment(long Nanoseconds) : IComparable<Moment>
{
    public static Moment operator +(Moment at, TimeSpan span) => new(at.Nanoseconds + (span.Ticks * TimeSpan.NanosecondsPerTick));

    public static Moment operator -(Moment at, TimeSpan span) => new(at.Nanoseconds - (span.Ticks * TimeSpan.NanosecondsPerTick));

    /// <summary>The time between two moments, rounded down to 100 ns.</summary>
    public static TimeSpan operator -(Moment later, Moment earlier) => new((later.Nanoseconds - earlier.Nanoseconds) / TimeSpan.NanosecondsPerTick);

    public static bool operator <(Moment a, Moment b) => a.Nanoseconds < b.Nanoseconds;

    public static bool operator >(Moment a, Moment b) => a.Nanoseconds > b.Nanoseconds;

    public static bool operator <=(Moment a, Moment b) => a.Nanoseconds <= b.Nanoseconds;

    public static bool operator >=(Moment a, Moment b) => a.Nanoseconds >= b.Nanoseconds;

    /// <summary>The earlier of two moments.</summary>
    public static Moment Earlier(Moment a, Moment b) => a <= b ? a : b;

    public int CompareTo(Moment other) => Nanoseconds.CompareTo(other.Nanoseconds);

    public override string ToString() => $"{Nanoseconds} ns";
}
