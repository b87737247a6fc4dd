namespace WarmupConsole.Music.Repertoire;

/// <summary>What is special about a note of a score.</summary>
[Flags]
public enum NoteTraits
{
    None = 0,

    /// <summary>Added to the note before it: both begin together.</summary>
    Chord = 1,

    /// <summary>Has a pitch but no time of its own.</summary>
    Grace = 2,

    /// <summary>Goes on into the next note of its pitch.</summary>
    TieStart = 4,

    /// <summary>Goes on from the note of its pitch before it.</summary>
    TieStop = 8,

    /// <summary>A breath mark or a caesura stands after it.</summary>
    BreathAfter = 16,
}
