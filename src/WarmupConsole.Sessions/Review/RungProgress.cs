namespace WarmupConsole.Sessions.Review;

/// <summary>How far the keys of a step have come.</summary>
public enum RungProgress
{
    /// <summary>The step is introduced, or has no keys.</summary>
    NotBegun,

    /// <summary>A rung is led in to or sung, or was broken off.</summary>
    Begun,

    /// <summary>The rung was sung to its end; the next one follows.</summary>
    Over,
}
