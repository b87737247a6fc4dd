using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Repertoire;

/// <summary>One pitched note of a score, as it sounds. Cue and unpitched notes are none.</summary>
/// <param name="Pitch">
/// The sounding pitch. The writer's spelling is kept, also where it is written an octave away; a part written in another key is
/// spelled with sharps.
/// </param>
/// <param name="WrittenMidi">MIDI number as written, before transposition.</param>
/// <param name="Bar">Index of its bar from 0.</param>
/// <param name="Offset">From the beginning of the bar to the beginning of the note; zero or more.</param>
/// <param name="Length">As written; zero for grace notes.</param>
/// <param name="Staff">Number of its staff, from 1.</param>
/// <param name="Voice">Name of its voice on the staff, usually a number.</param>
/// <param name="Traits">Chord member, grace note, tie, breath.</param>
/// <param name="Loudness">Its loudness word as a number, 0 for the softest word of <see cref="Exercises.DynamicsData"/>; null when the score has said nothing yet.</param>
/// <param name="Lyric">The syllable of the first verse, with a hyphen at its end where the word goes on; empty without one.</param>
public readonly record struct PartNote(
    Pitch Pitch,
    int WrittenMidi,
    int Bar,
    Beats Offset,
    Beats Length,
    int Staff,
    string Voice,
    NoteTraits Traits,
    int? Loudness,
    string Lyric)
{
    /// <summary>MIDI number of what sounds.</summary>
    public int Midi => Pitch.Midi;

    /// <summary>True when a trait is set.</summary>
    public bool Is(NoteTraits trait) => (Traits & trait) != 0;
}
