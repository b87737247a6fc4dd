using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Reports;

/// <summary>The ranges of every part, since when they hold, and what should be tested again.</summary>
internal static class RangesText
{
    /// <summary>Voices in this group move, and are tested anew.</summary>
    private const string Changing = "changing";

    /// <summary>Voices that change are tested anew every six to eight weeks (Cooksey, 1977, as quoted in teaching texts).</summary>
    private const int LongestDaysBetween = 8 * 7;

    internal static string Write(Choir choir, DateOnly day)
    {
        int widest = choir.Parts.Max(part => part.Name.Length);
        IEnumerable<string> lines = choir.Parts.Select(part => $"{part.Name.PadRight(widest)}  {Ranges(part, choir.Notes)}  {Since(part.EntryOn(day))}");
        string[] due = [.. choir.Parts.Where(part => IsDue(part, day)).Select(part => part.Name)];
        return string.Join('\n', [.. lines, .. due.Length == 0 ? (string[])[] : [AppTexts.TestAgain(string.Join(", ", due))]]) + "\n";
    }

    /// <summary>True for changing voices that should be tested again.</summary>
    internal static bool IsDue(Part part, DateOnly day) =>
        part.Groups.Contains(Changing) && (part.EntryOn(day)?.From is not { } from || from.AddDays(LongestDaysBetween) < day);

    private static string Ranges(Part part, NoteNaming notes) => AppTexts.BothRanges(part.Range.Extreme.In(notes), part.Range.Comfortable.In(notes));

    private static string Since(RangeEntry? entry) => entry switch
    {
        { From: { } from } => AppTexts.Since(DayText.Write(from)),
        { IsStart: true } => AppTexts.StartRange,
        _ => AppTexts.UndatedRange,
    };
}
