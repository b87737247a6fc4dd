using System.Collections.Concurrent;
using System.Runtime.InteropServices;
using Terminal.Gui.Drivers;

namespace WarmupConsole.Tui.Hosting;

/// <summary>
/// The screen library's input with two differences: it waits in the system until a byte comes instead of sleeping 20 ms between
/// looks, and what is read is seen here first, before the screen's loop turns. Both need the library's loop replaced, and it
/// is no virtual method: the interface is implemented anew.
/// </summary>
internal sealed class InputTap(TabWatch watch) : AnsiInput, IInput<char>
{
    private const int StandardInput = 0;
    private const int Milliseconds = 100; // an end of the run is noticed after that
    private const short In = 1;

    // Elsewhere the library reads other handles, and a wait for this one would only hold it up.
    private readonly bool _canWait = (OperatingSystem.IsLinux() || OperatingSystem.IsMacOS()) && !Console.IsInputRedirected;
    private ConcurrentQueue<char> _keys = new();

    void IInput<char>.Initialize(ConcurrentQueue<char> inputQueue)
    {
        _keys = inputQueue;
        Initialize(inputQueue);
    }

    void IInput<char>.Run(CancellationToken runCancellationToken)
    {
        if (!_canWait)
        {
            Run(runCancellationToken);
            return;
        }

        while (!runCancellationToken.IsCancellationRequested)
        {
            switch (Wait())
            {
                case 0:
                    break;
                case In:
                    TakeAll();
                    break;
                default: // a terminal that is gone is always ready and never has any
                    runCancellationToken.WaitHandle.WaitOne(Milliseconds);
                    break;
            }
        }
    }

    public override IEnumerable<char> Read()
    {
        watch.BeginRead();
        foreach (char character in base.Read())
        {
            watch.See(character);
            yield return character;
        }
    }

    private void TakeAll()
    {
        foreach (char character in Read())
        {
            _keys.Enqueue(character);
        }
    }

    /// <summary>What the terminal has after at most that long: nothing, input, or no more for ever.</summary>
    private static short Wait()
    {
        PollEntry entry = new(StandardInput, In);
        return poll(ref entry, 1, Milliseconds) > 0 ? entry.Seen : (short)0;
    }

#pragma warning disable SYSLIB1054 // Nothing is marshalled here: generated code would need this project to allow unsafe blocks.
    [DllImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int poll(ref PollEntry entries, nuint count, int milliseconds);
#pragma warning restore SYSLIB1054

    /// <summary>struct pollfd.</summary>
    private struct PollEntry(int descriptor, short wanted)
    {
        internal readonly int Descriptor = descriptor;
        internal readonly short Wanted = wanted;
        internal readonly short Seen = 0;
    }
}
