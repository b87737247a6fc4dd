using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Music.Writing;

/// <summary>One voice of a piece.</summary>
/// <param name="Name">As it is shown.</param>
/// <param name="IsSung">True for a part of the choir, false for the piano.</param>
/// <param name="Notes">From the beginning of the piece.</param>
/// <param name="Words">What is sung, at the notes it is sung on.</param>
public sealed record WrittenTrack(string Name, bool IsSung, IReadOnlyList<ScoreNote> Notes, IReadOnlyList<Placed<string>> Words);
