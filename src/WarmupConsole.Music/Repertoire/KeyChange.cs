namespace WarmupConsole.Music.Repertoire;

/// <summary>A key signature from a bar on, as it sounds.</summary>
/// <param name="Bar">Index of the bar from 0.</param>
/// <param name="Fifths">Sharps counted upwards, flats downwards; −7 to 7.</param>
/// <param name="IsMinor">True where the score says so; a score that says nothing is taken for major.</param>
public sealed record KeyChange(int Bar, int Fifths, bool IsMinor);
