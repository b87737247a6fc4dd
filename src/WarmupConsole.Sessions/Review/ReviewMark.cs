using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Review;

/// <summary>What was marked of one part; a mark of several parts is several of these with the same id.</summary>
/// <param name="Id">Number of the mark in its session.</param>
/// <param name="Part">Id of the part, or empty when nobody sang there or it is a free note.</param>
/// <param name="Kind">Id of the kind, or null for a free note.</param>
/// <param name="IsPraise">True when nothing needs work.</param>
/// <param name="Key">Tonic of the key it refers to, or null in steps without keys.</param>
/// <param name="Pitches">Sounding pitches of the part that it may mean, lowest first: the one named, in the octave in which the part sang it; those of the place named; else all of the rung.</param>
/// <param name="Place">Place in words, or empty.</param>
/// <param name="Raw">What was typed.</param>
/// <param name="Step">Index of the step it refers to.</param>
/// <param name="Rung">Index of the rung it refers to.</param>
/// <param name="At">Wall time when it was kept.</param>
public sealed record ReviewMark(
    int Id,
    string Part,
    string? Kind,
    bool IsPraise,
    Pitch? Key,
    IReadOnlyList<Pitch> Pitches,
    string Place,
    string Raw,
    int Step,
    int Rung,
    DateTimeOffset At)
{
    /// <summary>How much of it (see <see cref="StrengthData.Words"/>), or empty.</summary>
    public string Strength { get; init; } = "";

    /// <summary>True when the director named the pitch; then it is the only one.</summary>
    public bool IsPitchNamed { get; init; }
}
