using System.IO.Pipes;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Playing;

namespace WarmupConsole.Tests.Support;

/// <summary>The player's real loop over real pipes, in a thread instead of a process, with its time in the test's hands.</summary>
internal sealed class PlayerInThread : IPlayerLink
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);
    private readonly AnonymousPipeServerStream _toPlayer = new(PipeDirection.Out);
    private readonly AnonymousPipeServerStream _fromPlayer = new(PipeDirection.In);
    private readonly Thread _thread;

    internal PlayerInThread()
    {
        AnonymousPipeClientStream input = new(PipeDirection.In, _toPlayer.ClientSafePipeHandle);
        AnonymousPipeClientStream output = new(PipeDirection.Out, _fromPlayer.ClientSafePipeHandle);
        Loop = new(new PlayerEngine(_ => new(Port, true, "Playing.")), Waiter, input, output);
        _thread = new(() =>
        {
            Loop.Run();
            output.Dispose();
        });
        _thread.Start();
    }

    public Stream ToPlayer => _toPlayer;

    public Stream FromPlayer => _fromPlayer;

    public string LastWords { get; init; } = "";

    internal PlayerLoop Loop { get; }

    internal AwaitedPort Port { get; } = new();

    internal ManualWaiter Waiter { get; } = new();

    public void Kill() => Loop.Stop();

    public void Dispose()
    {
        _toPlayer.Dispose();
        WaitForEnd();
        _fromPlayer.Dispose();
    }

    internal void WaitForEnd() => Assert.True(_thread.Join(Patience), "The player did not end.");
}
