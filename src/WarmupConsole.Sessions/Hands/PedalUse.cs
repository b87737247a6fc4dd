namespace WarmupConsole.Sessions.Hands;

/// <summary>What a pedal, or another control under the hands or feet, can do. Its words are in <see cref="PedalUseData"/>.</summary>
public enum PedalUse
{
    GoOn,
    Again,
    TurnRound,
    Silence,
    Pin,
}
