using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Sessions.Review;

/// <summary>The facts that a running session shows.</summary>
public static class SessionFactsOfSession
{
    /// <summary>The same facts that folding its events gives.</summary>
    public static SessionFacts Facts(this LiveSession session)
    {
        ArgumentNullException.ThrowIfNull(session);
        SessionFacts marks = new()
        {
            HasEnded = session.State == LiveState.Finished,
            Hold = session.Hold,
            Marks = [.. session.Marks.Select(mark => new MarkFact(mark.Id, mark.Anchor.Step, mark.Anchor.Rung, mark.Content.Raw, mark.Anchor.At.Nanoseconds))],
            NextMarkId = session.NextMarkId,
            Order = session.ChangedOrder,
            Tonight = session.Warmup.Tonight,
            Shortened = session.Shortened,
            Follows = session.Follows,
        };
        return !session.HasBegun || session.Step is null ? marks : marks with
        {
            HasBegun = true,
            StepIndex = session.StepIndex,
            RungIndex = session.RungIndex,
            Progress = ProgressOf(session.State),
            Keys = SessionKeys.Of(session.Rungs),
            MilliBpm = session.Tempo.MilliBeatsPerMinute,
            TempoKey = session.TempoKey,
            Voicing = session.Voicing,
            BreathBeats = session.BreathBeats ?? 0,
            Style = session.Style,
        };
    }

    private static RungProgress ProgressOf(LiveState state) => state switch
    {
        LiveState.Cue or LiveState.CountIn or LiveState.Rung or LiveState.Follow => RungProgress.Begun,
        LiveState.Breath or LiveState.Wait => RungProgress.Over,
        _ => RungProgress.NotBegun,
    };
}
