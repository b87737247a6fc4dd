using System.Globalization;
using System.Text;
using WarmupConsole.Midi.Ports;

namespace WarmupConsole.Midi.Files;

/// <summary>Everything sent, a line each: the nanosecond of the machine's monotonic clock, and the bytes in hexadecimal.</summary>
internal static class TraceText
{
    internal static byte[] Build(IReadOnlyList<TimedMessage> messages)
    {
        StringBuilder text = new();
        foreach (TimedMessage message in messages)
        {
            text.Append(CultureInfo.InvariantCulture, $"{message.At.Nanoseconds} {Convert.ToHexString(message.Bytes.Span)}\n");
        }

        return Encoding.ASCII.GetBytes(text.ToString());
    }
}
