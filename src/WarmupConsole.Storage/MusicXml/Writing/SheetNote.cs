using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Storage.MusicXml.Writing;

/// <summary>One written note or rest of a part.</summary>
/// <param name="Start">From the beginning of the exercise.</param>
/// <param name="Length">How long it is written.</param>
/// <param name="Value">As which note; null where only its duration is told.</param>
/// <param name="Pitch">Null for a rest.</param>
internal sealed record SheetNote(Beats Start, Beats Length, NoteValue? Value, Pitch? Pitch)
{
    /// <summary>True when it goes on from the note before.</summary>
    internal bool IsTiedBack { get; init; }

    /// <summary>True when it goes on in the next note.</summary>
    internal bool IsTiedOn { get; init; }

    /// <summary>The syllable sung on it, or null.</summary>
    internal string? Word { get; init; }

    /// <summary>True when the syllable is carried on to the notes that follow.</summary>
    internal bool IsCarried { get; init; }
}
