using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Events;

/// <summary>An event with the envelope of its line.</summary>
/// <param name="Sequence">Counts from 1 without gaps over the whole file.</param>
/// <param name="At">Wall time with its offset, for people; never used for measuring.</param>
/// <param name="Epoch">Counts the runs in this file: 1, and one more after each resumption.</param>
/// <param name="Monotonic">Monotonic time; comparable only within one epoch.</param>
/// <param name="Event">The fact.</param>
public sealed record SessionRecord(long Sequence, DateTimeOffset At, int Epoch, Moment Monotonic, SessionEvent Event);
