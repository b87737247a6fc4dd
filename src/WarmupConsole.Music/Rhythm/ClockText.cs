using System.Globalization;

namespace WarmupConsole.Music.Rhythm;

/// <summary>Lengths of time as every screen, report and sentence shows them.</summary>
public static class ClockText
{
    /// <summary>Minutes and seconds, rounded to the nearest second, never below zero: "6:40", "0:00".</summary>
    public static string Of(TimeSpan time)
    {
        long seconds = (long)Math.Round(Math.Max(0, time.TotalSeconds), MidpointRounding.AwayFromZero);
        return string.Create(CultureInfo.InvariantCulture, $"{seconds / 60}:{seconds % 60:00}");
    }
}
