using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>One rung that the part sang.</summary>
/// <param name="Line">What it was asked for.</param>
/// <param name="Rung">Tempo and minute.</param>
/// <param name="Session">Index of the session.</param>
/// <param name="Stratum">The same for the rungs of one step in one session.</param>
internal readonly record struct ExposureRow(ExposedLine Line, ExposedRung Rung, int Session, int Stratum);
