namespace WarmupConsole.Midi.Playing;

/// <summary>How punctual the note-ons were: time of sending minus due time.</summary>
public readonly record struct OnsetFigures(int Played, int Dropped, long MedianNanoseconds, long Percentile99Nanoseconds, long WorstNanoseconds);
