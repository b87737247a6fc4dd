namespace WarmupConsole.Music.Ladders;

/// <summary>Two ladders instead of one, where few keys fit everyone: the low voices first from a lower key, then the high ones from the middle.</summary>
/// <param name="Lower">Those who begin.</param>
/// <param name="Higher">Those who follow.</param>
public sealed record LadderOffer(LadderHalf Lower, LadderHalf Higher);
