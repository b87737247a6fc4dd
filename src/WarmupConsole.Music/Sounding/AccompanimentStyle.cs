namespace WarmupConsole.Music.Sounding;

/// <summary>What the piano plays while the choir sings.</summary>
public enum AccompanimentStyle
{
    /// <summary>Nothing: the cue chords give the key, and the choir sings alone.</summary>
    CueOnly,

    /// <summary>The melody in every octave in which it is sung.</summary>
    Melody,

    /// <summary>Whole chords.</summary>
    Block,

    /// <summary>The tones of the chords one after another.</summary>
    Broken,

    /// <summary>The bass on one beat, the chord on the next.</summary>
    BassAndChord,

    /// <summary>Tonic and fifth throughout, whatever the chords are.</summary>
    Drone,
}
