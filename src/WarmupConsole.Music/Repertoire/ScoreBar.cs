using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Repertoire;

/// <summary>One bar of a score, the same for all parts.</summary>
/// <param name="Number">As printed; need not be a number ("X1", and "0" for a pickup).</param>
/// <param name="Start">From the beginning of the score, with nothing repeated.</param>
/// <param name="Length">The longest that any part fills it.</param>
/// <param name="Jumps">Repeats, endings and leaps that concern it, or null.</param>
public sealed record ScoreBar(string Number, Beats Start, Beats Length, BarJumps? Jumps);
