using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Tui.Screens;

/// <summary>What the last picture adds once the log is on disk.</summary>
/// <param name="Sentences">About the rehearsal ahead.</param>
/// <param name="Times">Every step with its planned and its real minutes.</param>
public sealed record AheadCard(IReadOnlyList<string> Sentences, IReadOnlyList<StepTime> Times)
{
    /// <summary>Nothing is known yet.</summary>
    public static AheadCard None { get; } = new([], []);
}
