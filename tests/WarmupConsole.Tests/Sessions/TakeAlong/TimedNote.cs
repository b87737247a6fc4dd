namespace WarmupConsole.Tests.Sessions.TakeAlong;

/// <summary>A note in seconds; ordered by its start.</summary>
internal sealed record TimedNote(int Midi, double Start, double End, int Velocity) : IComparable<TimedNote>
{
    public int CompareTo(TimedNote? other) => (Math.Round(Start, 4), Midi).CompareTo((Math.Round(other!.Start, 4), other.Midi));

    public static bool operator <(TimedNote left, TimedNote right) => left.CompareTo(right) < 0;

    public static bool operator >(TimedNote left, TimedNote right) => left.CompareTo(right) > 0;

    public static bool operator <=(TimedNote left, TimedNote right) => left.CompareTo(right) <= 0;

    public static bool operator >=(TimedNote left, TimedNote right) => left.CompareTo(right) >= 0;
}
