using System.Globalization;

namespace WarmupConsole.App.Reports;

/// <summary>Lengths of time as minutes and seconds.</summary>
internal static class Minutes
{
    internal static string Of(TimeSpan time)
    {
        long seconds = (long)Math.Round(time.TotalSeconds);
        return string.Create(CultureInfo.InvariantCulture, $"{seconds / 60}:{seconds % 60:00}");
    }
}
