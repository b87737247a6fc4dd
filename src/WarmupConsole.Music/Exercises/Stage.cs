namespace WarmupConsole.Music.Exercises;

/// <summary>The kind of work, in the order of a warm-up (common practice: body and breath, then half-closed sounds, then singing).</summary>
public enum Stage
{
    /// <summary>Posture and loosening; nothing sounds.</summary>
    Body,

    /// <summary>Breath, in counted phases; no pitch.</summary>
    Breathing,

    /// <summary>Humming on closed lips.</summary>
    Humming,

    /// <summary>Lip or tongue trills and other half-closed sounds.</summary>
    LipTrill,

    /// <summary>Gliding between pitches.</summary>
    Slide,

    /// <summary>Singing on open vowels and syllables.</summary>
    Sung,

    /// <summary>Coming back to rest after the peak.</summary>
    Settling,
}
