using WarmupConsole.Music.Voices;

namespace WarmupConsole.Storage.Choirs;

/// <summary>A change of range that the director accepted: one line of ranges.jsonl.</summary>
/// <param name="PartId">The part.</param>
/// <param name="From">The first day it counts.</param>
/// <param name="Range">Its ranges from then on.</param>
public sealed record MeasuredRange(string PartId, DateOnly From, VoiceRange Range);
