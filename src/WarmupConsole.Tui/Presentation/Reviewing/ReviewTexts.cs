using System.Globalization;

namespace WarmupConsole.Tui.Presentation.Reviewing;

/// <summary>Every text of the review screen that does not come from the review itself.</summary>
internal static class ReviewTexts
{
    internal const string NoLastSession = "The last session cannot be read; see Left out.";
    internal const string NoFindings = "Nothing stands out yet; chance would explain the marks as well.";
    internal const string NoHeat = "Nothing was marked.";
    internal const string HeatHead = "Marked / sung keys that hold the pitch. Shades: · none, ░ below 10 %, ▒ below 25 %, ▓ below 50 %, █ from 50 % on; * beyond the comfortable range.";
    internal const string MoreParts = "{0} more to the right: make the window wider.";
    internal const string NoTrends = "There is no finding whose course could be shown.";
    internal const string TrendHead = "Of the times that the pitch was sung, those put down to it.";
    internal const string NoAdvice = "No limit should move.";
    internal const string PurposesHead = "Purpose                         steps  sessions  last";
    internal const string TimesHead = "Exercise                              times   talk   whole  last";
    internal const string TimesNote = "Usual talk and whole time with the talk: the middle one of all times it was led, pauses left out.";
    internal const string Never = "never in these weeks";
    internal const string ThisTime = "in the last session";
    internal const string Keys = "← → page   1-8 page   ↑ ↓ line   Space Bksp screenful   ? help   Ctrl+Q leave";
    internal const string KeysShort = "←→ page  ↑↓ line  ? help  Ctrl+Q leave";
    internal const string HelpCommands = "In words, as a table or as a page to print: warmup review --help. A finding that is none: warmup review dismiss ID --why \"...\". A limit that should move: warmup ranges accept.";

    internal static IReadOnlyList<string> Views { get; } = ["Last session", "Findings", "Heat map", "Trends", "Ranges", "Purposes", "Times", "Left out", "Help"];

    /// <summary>Keys and what they do.</summary>
    internal static IReadOnlyList<(string Keys, string Words)> HelpKeys { get; } =
    [
        ("← →", "The page before, the page after."),
        ("1-8", "The page with this number."),
        ("↑ ↓", "A line up or down."),
        ("Space Bksp", "A screenful down or up."),
        ("Home End", "The first line, the last line."),
        ("?", "This page; once more, the page before."),
        ("Ctrl+Q", "Leave the review."),
    ];

    /// <summary>What each page before this one shows, in their order.</summary>
    internal static IReadOnlyList<string> HelpPages { get; } =
    [
        "What was sung on the last evening, step by step, and what was heard, with its place.",
        "What stands out more than chance would explain, strongest first. Each names its evidence: how often the pitch was sung and how often it was marked, and an interval for the rate behind it.",
        "How often each part was marked on each pitch, every kind but praise together.",
        "Whether a finding got better or worse from session to session.",
        "Comfortable limits that the sessions speak against. Nothing moves by itself.",
        "What each purpose got, and how long ago.",
        "How long each exercise took with its talk, so that the next plan fits the minutes.",
        "What was not weighed, and why: damaged lines, renamed parts, dismissed findings.",
    ];

    internal static string Ago(int sessions) => sessions == 1 ? "1 session ago" : string.Create(CultureInfo.InvariantCulture, $"{sessions} sessions ago");

    internal static string Lines(int from, int to, int all) => string.Create(CultureInfo.InvariantCulture, $"lines {from}–{to} of {all}");
}
