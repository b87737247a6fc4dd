using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Live;

/// <summary>What the director let the piano give by hand, beside the course of the keys.</summary>
/// <param name="Notes">MIDI numbers, in the order they were added.</param>
/// <param name="UntilReleased">True for a chord or tone that is held; a cue or a proof note ends by itself.</param>
/// <param name="Timeline">The timeline that its notes were handed over in.</param>
public sealed record Sounded(IReadOnlyList<int> Notes, bool UntilReleased, Timeline Timeline);
