using WarmupConsole.App.Running;
using WarmupConsole.Tui.Presentation.Reviewing;

namespace WarmupConsole.App.Reports;

/// <summary>The review as the full screen shows it.</summary>
internal static class ReviewModelOf
{
    /// <param name="review">What the last weeks show.</param>
    /// <param name="lastSession">The last session in words; may be empty.</param>
    internal static ReviewModel Season(SeasonReview review, string lastSession) =>
        new(review.Choir, SeasonText.Head(review), lastSession, review.Findings, review.Ranges, review.Heat, review.Practised, review.NotTold);
}
