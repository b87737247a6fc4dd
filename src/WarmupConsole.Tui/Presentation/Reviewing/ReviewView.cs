namespace WarmupConsole.Tui.Presentation.Reviewing;

/// <summary>The pages of the review, in the order of their numbers on the screen.</summary>
public enum ReviewView
{
    LastSession,
    Findings,
    HeatMap,
    Trends,
    Ranges,
    Purposes,
    Times,
    LeftOut,

    /// <summary>Has a key of its own instead of a number.</summary>
    Help,
}
