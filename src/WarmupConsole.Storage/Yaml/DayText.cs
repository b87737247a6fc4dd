using System.Globalization;

namespace WarmupConsole.Storage.Yaml;

/// <summary>Days as files, names of files and reports write them: "2027-02-16".</summary>
public static class DayText
{
    /// <summary>Characters of a day.</summary>
    public const int Length = 10;

    private const string Pattern = "yyyy-MM-dd";

    public static string Write(DateOnly day) => day.ToString(Pattern, CultureInfo.InvariantCulture);

    /// <summary>Reads a day that is written so, and no other.</summary>
    public static bool TryRead(string text, out DateOnly day) =>
        DateOnly.TryParseExact(text, Pattern, CultureInfo.InvariantCulture, DateTimeStyles.None, out day);
}
