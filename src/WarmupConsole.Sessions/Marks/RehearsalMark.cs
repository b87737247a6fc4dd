namespace WarmupConsole.Sessions.Marks;

/// <summary>A mark of the rehearsal as the screen shows it.</summary>
/// <param name="Piece">The piece, or empty.</param>
/// <param name="Bars">Its bars, or empty.</param>
/// <param name="Echo">All of it in words.</param>
public sealed record RehearsalMark(string Piece, string Bars, string Echo);
