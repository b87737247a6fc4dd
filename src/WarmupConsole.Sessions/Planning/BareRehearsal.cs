namespace WarmupConsole.Sessions.Planning;

/// <summary>A rehearsal without a warm-up, on purpose: voices meet the music cold, as they may have to at a concert.</summary>
/// <param name="Told">True when the singers are told, so that they can warm up at home.</param>
/// <param name="Because">Why.</param>
public sealed record BareRehearsal(bool Told, string Because);
