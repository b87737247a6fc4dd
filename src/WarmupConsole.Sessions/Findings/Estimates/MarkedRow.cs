namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>A row that a mark may mean.</summary>
/// <param name="Row">Index among the rows of the part.</param>
/// <param name="Weight">How likely, before the estimate; 1 in all.</param>
/// <param name="Named">The pitches that the mark named there, by their MIDI numbers; empty when it named none.</param>
internal readonly record struct MarkedRow(int Row, double Weight, IReadOnlyList<int> Named);
