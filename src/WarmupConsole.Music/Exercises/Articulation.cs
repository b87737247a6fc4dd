namespace WarmupConsole.Music.Exercises;

/// <summary>How notes are joined.</summary>
public enum Articulation
{
    Legato,
    Staccato,
    Marcato,

    /// <summary>Slid from note to note.</summary>
    Glide,
}
