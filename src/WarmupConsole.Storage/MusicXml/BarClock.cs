using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Storage.MusicXml;

/// <summary>
/// Where in its bar a part stands. Counted in quarter notes and turned into ticks at the end, so that divisions which do not
/// divide 960 never add up an error.
/// </summary>
internal sealed class BarClock
{
    private double quarters;
    private double end;
    private double last;

    /// <summary>Divisions of a quarter note; lasts until it is changed.</summary>
    internal double Divisions { get; set; } = 1;

    internal long Ticks => ToTicks(quarters);

    /// <summary>Where the last note began, for the members of a chord.</summary>
    internal long LastTicks => ToTicks(last);

    /// <summary>How far the bar was filled, in quarter notes.</summary>
    internal double FilledQuarters => end;

    internal long FilledTicks => ToTicks(end);

    internal void BeginBar() => (quarters, end, last) = (0, 0, 0);

    /// <summary>Goes on by a duration; negative goes back. False when that led before the beginning of the bar, where it then stands.</summary>
    internal bool Go(double duration)
    {
        last = quarters;
        quarters += duration / Divisions;
        bool isIn = quarters > -1e-6;
        quarters = Math.Max(0, quarters);
        end = Math.Max(end, quarters);
        return isIn;
    }

    /// <summary>Length in ticks of what lasts from the beginning of the last note.</summary>
    internal long LengthOf(long startTicks, double duration) => ToTicks((startTicks / (double)Beats.TicksPerBeat) + (duration / Divisions)) - startTicks;

    private static long ToTicks(double quarters) => (long)Math.Round(quarters * Beats.TicksPerBeat);
}
