namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>One rung that the part sang.</summary>
/// <param name="Cell">Which of the part's different lines it was.</param>
/// <param name="MilliBpm">How fast, in thousandths of a beat a minute.</param>
/// <param name="Minute">Minutes of the warm-up before it.</param>
/// <param name="Session">Index of the session.</param>
/// <param name="Stratum">The same for the rungs of one step in one session.</param>
internal readonly record struct ExposureRow(int Cell, int MilliBpm, double Minute, int Session, int Stratum);
