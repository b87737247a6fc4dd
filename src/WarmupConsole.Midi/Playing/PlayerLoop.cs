using System.Threading.Channels;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Protocol;
using WarmupConsole.Midi.Timing;

namespace WarmupConsole.Midi.Playing;

/// <summary>
/// The player's life over two streams: one thread reads frames, the calling thread plays. It ends, always silent and with
/// the port closed, at end of input, Quit, a broken frame or <see cref="Stop"/>.
/// </summary>
public sealed class PlayerLoop(PlayerEngine engine, IWaiter waiter, Stream input, Stream output)
{
    private static readonly TimeSpan AllowedToSend = TimeSpan.FromSeconds(2);
    private static readonly TimeSpan AllowedToOpen = TimeSpan.FromSeconds(10);

    private readonly Channel<Frame> _inbox = Channel.CreateBounded<Frame>(ProtocolConstants.MostQueuedFrames);
    private readonly FrameReader _reader = new(input);
    private readonly FrameWriter _writer = new(output);
    private PortSight? _sight;
    private volatile bool _stopped;
    private bool _hostGone;
    private bool _greeted;
    private long _deadline = long.MaxValue;

    /// <summary>The input is at its end, or broken; raised on the reading thread.</summary>
    public event Action? InputEnded;

    /// <summary>The port has kept the playing thread longer than a working one does: its driver has stopped taking anything.</summary>
    public bool IsStuck => waiter.Now.Nanoseconds > Volatile.Read(ref _deadline);

    public void Run()
    {
        new Thread(ReadFrames) { IsBackground = true, Name = "player input" }.Start();
        try
        {
            while (!_stopped)
            {
                HandleFrames();
                FollowPort();
                PlayOnce();
            }
        }
        finally
        {
            Finish();
        }
    }

    /// <summary>Ends the loop; from any thread.</summary>
    public void Stop()
    {
        _stopped = true;
        waiter.Wake();
    }

    /// <summary>What a <see cref="PortWatcher"/> saw; acted on between two notes. From any thread.</summary>
    public void See(PortSight sight)
    {
        Interlocked.Exchange(ref _sight, sight);
        waiter.Wake();
    }

    private void ReadFrames()
    {
        try
        {
            while (_reader.Read() is { } frame)
            {
                _inbox.Writer.WriteAsync(frame).AsTask().GetAwaiter().GetResult(); // when full, the pipe has to wait
                waiter.Wake();
            }
        }
        catch (Exception e) when (e is ProtocolException or IOException or ObjectDisposedException)
        {
            // Input that cannot be read is input at its end: the host is gone or not to be trusted.
        }

        InputEnded?.Invoke();
        _inbox.Writer.Complete();
        waiter.Wake();
    }

    private void HandleFrames()
    {
        while (!_stopped && _inbox.Reader.TryRead(out Frame? frame))
        {
            Handle(frame);
        }

        _stopped |= _inbox.Reader.Completion.IsCompleted;
    }

    private void Handle(Frame frame)
    {
        switch (frame)
        {
            case Frame.Hello hello when hello.Version == ProtocolConstants.Version:
                _greeted = true;
                Report(new Frame.Ready(ProtocolConstants.Version));
                break;
            case Frame.Hello hello:
                Refuse(PlayingTexts.WrongVersion(hello.Version));
                break;
            case var _ when !_greeted:
                Refuse(PlayingTexts.NoGreeting(frame));
                break;
            case Frame.Quit:
                _stopped = true;
                break;
            default:
                Allow(frame is Frame.OpenPort ? AllowedToOpen : AllowedToSend);
                Report(WithTimeOfSending(engine.Handle(frame, waiter.Now)));
                break;
        }
    }

    private void PlayOnce()
    {
        if (!_stopped)
        {
            Volatile.Write(ref _deadline, long.MaxValue);
            waiter.WaitUntil(engine.NextDue);
            Allow(AllowedToSend);
            Report(engine.RunDue(waiter.Now));
        }
    }

    private void FollowPort()
    {
        if (Interlocked.Exchange(ref _sight, null) is { } sight)
        {
            Allow(AllowedToOpen);
            Report(engine.Take(sight));
        }
    }

    private void Allow(TimeSpan time) => Volatile.Write(ref _deadline, (waiter.Now + time).Nanoseconds);

    private Frame? WithTimeOfSending(Frame? report) => report is Frame.Silenced silenced ? silenced with { At = waiter.Now } : report;

    private void Refuse(string sentence)
    {
        Report(new Frame.Refused(sentence));
        _stopped = true;
    }

    private void Finish()
    {
        string? trouble = engine.End();
        Report(trouble is null ? null : new Frame.PortFailed(trouble));
        Report(new Frame.Onsets(engine.Onsets));
    }

    private void Report(Frame? report)
    {
        if (report is null || _hostGone)
        {
            return;
        }

        try
        {
            _writer.Write(report);
        }
        catch (Exception e) when (e is IOException or ObjectDisposedException)
        {
            _hostGone = true; // the end of input follows
        }
    }
}
