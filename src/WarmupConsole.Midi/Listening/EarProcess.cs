using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Protocol;
using WarmupConsole.Midi.Timing;

namespace WarmupConsole.Midi.Listening;

/// <summary>What the listening child process does: it tells what it hears until its input ends. It owns the MIDI input, so no library that fails takes console or player with it.</summary>
public static class EarProcess
{
    public static int Run(Stream input, Stream output, Func<InputOpening> open, IMonotonicClock clock)
    {
        using ManualResetEvent ends = new(false);
        using EndSignals signals = new(() => ends.Set());
        FrameWriter writer = new(output);
        new Thread(() => EndWith(input, ends)) { IsBackground = true, Name = "ear's end" }.Start();
        new Ear(open, frame => Tell(writer, frame, ends), clock).Run(ends);
        return 0;
    }

    private static void EndWith(Stream input, ManualResetEvent ends)
    {
        Span<byte> nothing = stackalloc byte[16];
        try
        {
            while (input.Read(nothing) > 0)
            {
            }
        }
        catch (IOException)
        {
            // An input that cannot be read is one at its end.
        }

        try
        {
            ends.Set();
        }
        catch (ObjectDisposedException)
        {
            // It has ended by another way.
        }
    }

    private static void Tell(FrameWriter writer, Frame frame, ManualResetEvent ends)
    {
        try
        {
            writer.Write(frame);
        }
        catch (IOException)
        {
            ends.Set(); // nobody listens any more
        }
    }
}
