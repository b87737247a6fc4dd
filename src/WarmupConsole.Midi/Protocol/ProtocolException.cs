namespace WarmupConsole.Midi.Protocol;

/// <summary>The bytes are no frame of this protocol; nothing after them can be trusted.</summary>
public sealed class ProtocolException : Exception
{
    public ProtocolException()
    {
    }

    public ProtocolException(string message)
        : base(message)
    {
    }

    public ProtocolException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
