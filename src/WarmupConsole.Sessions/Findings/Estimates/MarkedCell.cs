namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>A line that a mark may mean.</summary>
/// <param name="Cell">Its number among the lines of the part.</param>
/// <param name="Weight">How likely, before the estimate.</param>
/// <param name="Named">One bit for each MIDI number that the mark named there; 0 when it named none.</param>
internal readonly record struct MarkedCell(int Cell, double Weight, UInt128 Named);
