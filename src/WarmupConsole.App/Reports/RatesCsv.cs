using System.Globalization;
using WarmupConsole.App.Running;

namespace WarmupConsole.App.Reports;

/// <summary>Every count of a review as comma-separated values (RFC 4180), for a spreadsheet.</summary>
internal static class RatesCsv
{
    internal const string Head = "part,kind,aspect,value,marked,exposed,share,low,high";

    internal static string Write(SeasonReview review) => string.Join("\r\n", review.Rates.Select(row => string.Create(
        CultureInfo.InvariantCulture,
        $"{Cell(row.Part)},{Cell(row.Kind)},{row.Aspect.ToString().ToLowerInvariant()},{Cell(row.Value)},{row.Rate.Marked:0.##},{row.Rate.Exposed:0},{row.Rate.Share:0.####},{row.Rate.Low:0.####},{row.Rate.High:0.####}"))
        .Prepend(Head)) + "\r\n";

    private static string Cell(string text) => text.AsSpan().IndexOfAny(",\"\r\n") < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
