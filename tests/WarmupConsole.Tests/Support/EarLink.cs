using System.IO.Pipes;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Protocol;

namespace WarmupConsole.Tests.Support;

/// <summary>A listening process over a real pipe, that says and dies as the test wants.</summary>
internal sealed class EarLink : IPlayerLink
{
    private readonly AnonymousPipeServerStream _fromEar = new(PipeDirection.In);
    private readonly AnonymousPipeClientStream _ear;

    internal EarLink() => _ear = new(PipeDirection.Out, _fromEar.ClientSafePipeHandle);

    public Stream ToPlayer => Stream.Null;

    public Stream FromPlayer => _fromEar;

    public string LastWords { get; init; } = "";

    internal bool IsDisposed { get; private set; }

    internal void Say(Frame frame) => new FrameWriter(_ear).Write(frame);

    public void Kill() => _ear.Dispose();

    public void Dispose()
    {
        IsDisposed = true;
        _ear.Dispose();
        _fromEar.Dispose();
    }
}
