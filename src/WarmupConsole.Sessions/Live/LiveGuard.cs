using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Live;

/// <summary>A condition on a transition.</summary>
/// <param name="Words">As the diagram words it.</param>
/// <param name="Refusal">What the director is told when it alone stands in the way.</param>
/// <param name="HoldsAt">Whether it is met at a moment.</param>
internal sealed record LiveGuard(string Words, string Refusal, Func<LiveSession, Moment, bool> HoldsAt)
{
    /// <summary>A condition that no clock changes.</summary>
    public LiveGuard(string words, string refusal, Func<LiveSession, bool> holds)
        : this(words, refusal, (session, _) => holds(session))
    {
    }

    public bool Holds(LiveSession session) => HoldsAt(session, default);
}
