namespace WarmupConsole.Sessions.Review;

/// <summary>How often a part sang a pitch, and in how many of those rungs a mark may have meant it.</summary>
/// <param name="Part">Id of the part.</param>
/// <param name="Midi">MIDI number of the sounding pitch.</param>
/// <param name="Marked">Rungs with at least one mark that is no praise; at most <paramref name="Sung"/>.</param>
/// <param name="Sung">Rungs in which the pattern asked the part for the pitch.</param>
public sealed record PitchCount(string Part, int Midi, int Marked, int Sung);
