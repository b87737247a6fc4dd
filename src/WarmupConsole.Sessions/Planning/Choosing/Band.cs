namespace WarmupConsole.Sessions.Planning.Choosing;

/// <summary>The parts of a warm-up that each have their least and most steps, in their order.</summary>
public enum Band
{
    Body,
    Breathing,

    /// <summary>Humming, lip trills and other half-closed sounds.</summary>
    HalfClosed,
    Slide,
    Sung,
    Settling,
}
