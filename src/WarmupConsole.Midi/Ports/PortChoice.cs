namespace WarmupConsole.Midi.Ports;

/// <summary>Which port is wanted. <paramref name="Name"/> matters only for <see cref="PortChoiceKind.Named"/>.</summary>
public readonly record struct PortChoice(PortChoiceKind Kind, string Name = "")
{
    public static PortChoice First => new(PortChoiceKind.First);

    public static PortChoice None => new(PortChoiceKind.None);

    public static PortChoice Named(string name) => new(PortChoiceKind.Named, name);
}
