namespace WarmupConsole.Sessions.Hands;

/// <summary>Something that was played or trodden on: a key of the piano, or a controller (a pedal is one).</summary>
/// <param name="IsKey">True for a key.</param>
/// <param name="Number">MIDI number of the key or of the controller.</param>
/// <param name="Value">How hard a key was struck, 0 when it is let go; where the controller stands, 0–127.</param>
public readonly record struct Touch(bool IsKey, int Number, int Value);
