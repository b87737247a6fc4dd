namespace WarmupConsole.Tests.Sessions.Findings.Seasons;

/// <summary>A hidden weakness.</summary>
/// <param name="Part">Who has it.</param>
/// <param name="Midi">Where.</param>
/// <param name="Kind">What is heard.</param>
/// <param name="MarkedRate">How often it is rightly marked when it is sung: less often than it goes wrong, for nobody hears everything.</param>
internal sealed record Weakness(string Part, int Midi, string Kind, double MarkedRate);
