using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Hands;

/// <summary>What is known of one bound control.</summary>
/// <param name="IsDown">Null before it was seen at rest or fully down.</param>
/// <param name="Changed">When it last went down or up.</param>
/// <param name="Pressed">When it was last taken as a press.</param>
public readonly record struct ControlState(bool? IsDown, Moment? Changed, Moment? Pressed);
