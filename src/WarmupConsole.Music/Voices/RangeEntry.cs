namespace WarmupConsole.Music.Voices;

/// <summary>What a part could sing from a day on.</summary>
/// <param name="From">The first day it counts; null when it counted before all dated ones.</param>
/// <param name="Range">Its ranges.</param>
/// <param name="IsStart">True for ranges from a published table, not yet the choir's own.</param>
public sealed record RangeEntry(DateOnly? From, VoiceRange Range, bool IsStart);
