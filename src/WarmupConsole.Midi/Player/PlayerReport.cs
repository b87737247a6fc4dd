namespace WarmupConsole.Midi.Player;

/// <summary>What a player has to say. <paramref name="Sentence"/> is for the director.</summary>
public sealed record PlayerReport(PlayerReportKind Kind, string Sentence);
