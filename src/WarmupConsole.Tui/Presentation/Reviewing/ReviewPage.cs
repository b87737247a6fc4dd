namespace WarmupConsole.Tui.Presentation.Reviewing;

/// <summary>A page of the review, ready to be shown.</summary>
/// <param name="Head">Lines that stay while the others move.</param>
/// <param name="Lines">All others.</param>
internal sealed record ReviewPage(IReadOnlyList<ReviewLine> Head, IReadOnlyList<ReviewLine> Lines)
{
    internal static ReviewPage Of(ReviewModel model, ReviewView view, int columns) => view switch
    {
        ReviewView.LastSession => new([], LastSessionLines.Of(model, columns)),
        ReviewView.Findings => new([], FindingLines.Of(model, columns)),
        ReviewView.HeatMap => HeatLines.Of(model, columns),
        ReviewView.Trends => new([], TrendLines.Of(model, columns)),
        ReviewView.Ranges => new([], RangeLines.Of(model, columns)),
        ReviewView.Purposes => PracticeLines.Purposes(model, columns),
        ReviewView.Times => PracticeLines.Times(model, columns),
        ReviewView.Help => new([], HelpLines.Of(columns)),
        _ => new([], [.. model.LeftOut.SelectMany(sentence => ReviewLine.Wrapped(sentence, columns))]),
    };
}
