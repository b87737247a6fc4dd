using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Repertoire.Places;

/// <summary>What one voice sings at once, ties joined: a note, or the outer notes of a divided moment.</summary>
/// <param name="Bar">Index of the bar it begins in.</param>
/// <param name="Start">Beats from the beginning.</param>
/// <param name="Length">Beats.</param>
/// <param name="StartSeconds">Seconds from the beginning.</param>
/// <param name="Seconds">How long.</param>
/// <param name="Low">Its lowest pitch.</param>
/// <param name="High">Its highest pitch; the same for a single note.</param>
/// <param name="Loudness">As <see cref="PartNote.Loudness"/>.</param>
/// <param name="Lyric">The syllable it is sung on, also where it is carried on from before; empty without words.</param>
/// <param name="IsNewSyllable">True where its own syllable begins.</param>
/// <param name="BreathAfter">A breath mark follows.</param>
public readonly record struct SungTone(
    int Bar,
    Beats Start,
    Beats Length,
    double StartSeconds,
    double Seconds,
    Pitch Low,
    Pitch High,
    int? Loudness,
    string Lyric,
    bool IsNewSyllable,
    bool BreathAfter)
{
    /// <summary>Beats from the beginning to its end.</summary>
    public Beats End => Start + Length;

    /// <summary>Seconds from the beginning to its end.</summary>
    public double EndSeconds => StartSeconds + Seconds;
}
