namespace WarmupConsole.Midi.Ports;

/// <summary>Sends to two ports. It is lost, and returns, when the first does; both are always served.</summary>
public sealed class TeePort(IMidiPort first, IMidiPort second) : IMidiPort
{
    public string Name => first.Name;

    public string LostSentence => first.LostSentence;

    public string BackSentence => first.BackSentence;

    public bool Send(ReadOnlySpan<byte> message)
    {
        bool sent = first.Send(message);
        second.Send(message);
        return sent;
    }

    public string? Close()
    {
        string? ofFirst = first.Close();
        string? ofSecond = second.Close();
        return ofFirst is null ? ofSecond : ofSecond is null ? ofFirst : $"{ofFirst} {ofSecond}";
    }

    public void Lose() => first.Lose();

    public PortOpening? Return() => first.Return();
}
