namespace WarmupConsole.Midi.Sound;

/// <summary>What would sound without any instrument.</summary>
/// <param name="Plays">False without a loudspeaker.</param>
/// <param name="Sentence">What, and why that; or how to get sound.</param>
public sealed record SoundOutlook(bool Plays, string Sentence);
