namespace WarmupConsole.Midi.Protocol;

/// <summary>What is said about broken frames.</summary>
internal static class ProtocolErrors
{
    internal static ProtocolException TooLong(int length) =>
        new($"A frame of {length} bytes was announced; the longest allowed is {ProtocolConstants.LongestPayload}.");

    internal static ProtocolException CutShort() => new("The stream ended inside a frame.");

    internal static ProtocolException WrongCheck(int type) => new($"The check of a frame of type {type:X2} is wrong.");

    internal static ProtocolException UnknownType(int type) => new($"A frame of type {type:X2} is unknown to version {ProtocolConstants.Version}.");

    internal static ProtocolException WrongLength(int type, int length) => new($"A frame of type {type:X2} cannot have {length} bytes.");

    internal static ProtocolException OutOfRange(string field, long value, string range) => new($"{field} {value} is out of range ({range}).");

    internal static ProtocolException NotText(int type) => new($"The text of a frame of type {type:X2} is not UTF-8.");
}
