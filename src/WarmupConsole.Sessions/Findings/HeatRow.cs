namespace WarmupConsole.Sessions.Findings;

/// <summary>One pitch against all parts.</summary>
/// <param name="Midi">MIDI number of the sounding pitch.</param>
/// <param name="Cells">One for each part, in the order of the choir; null where the part never sang it.</param>
public sealed record HeatRow(int Midi, IReadOnlyList<HeatCell?> Cells);
