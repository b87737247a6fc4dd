using System.Buffers.Binary;

namespace WarmupConsole.Midi.Protocol;

/// <summary>Reads frames one by one. Used by one thread.</summary>
public sealed class FrameReader(Stream stream)
{
    private readonly byte[] _buffer = new byte[ProtocolConstants.HeaderBytes + ProtocolConstants.LongestPayload + ProtocolConstants.CheckBytes];

    /// <summary>The next frame; null when the stream ended between two frames.</summary>
    /// <exception cref="ProtocolException">The bytes are no frame; what follows cannot be read.</exception>
    /// <exception cref="IOException">The stream broke.</exception>
    public Frame? Read()
    {
        int got = stream.ReadAtLeast(_buffer.AsSpan(0, ProtocolConstants.HeaderBytes), ProtocolConstants.HeaderBytes, throwOnEndOfStream: false);
        if (got == 0)
        {
            return null;
        }

        int length = BinaryPrimitives.ReadUInt16LittleEndian(_buffer);
        if (got == ProtocolConstants.HeaderBytes && length > ProtocolConstants.LongestPayload)
        {
            throw ProtocolErrors.TooLong(length);
        }

        Span<byte> rest = _buffer.AsSpan(ProtocolConstants.HeaderBytes, Math.Min(length, ProtocolConstants.LongestPayload) + ProtocolConstants.CheckBytes);
        if (got < ProtocolConstants.HeaderBytes || stream.ReadAtLeast(rest, rest.Length, throwOnEndOfStream: false) < rest.Length)
        {
            throw ProtocolErrors.CutShort();
        }

        return Checked(length);
    }

    private Frame Checked(int length)
    {
        int end = ProtocolConstants.HeaderBytes + length;
        byte type = _buffer[ProtocolConstants.LengthBytes];
        return BinaryPrimitives.ReadUInt32LittleEndian(_buffer.AsSpan(end)) == ProtocolConstants.Check(_buffer.AsSpan(0, end))
            ? PayloadReader.Read((FrameType)type, _buffer.AsSpan(ProtocolConstants.HeaderBytes, length))
            : throw ProtocolErrors.WrongCheck(type);
    }
}
