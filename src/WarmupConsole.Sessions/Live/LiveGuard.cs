namespace WarmupConsole.Sessions.Live;

/// <summary>A condition on a transition.</summary>
/// <param name="Words">As the diagram words it.</param>
/// <param name="Refusal">What the director is told when it alone stands in the way.</param>
/// <param name="Holds">Whether it is met.</param>
internal sealed record LiveGuard(string Words, string Refusal, Func<LiveSession, bool> Holds);
