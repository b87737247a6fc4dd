using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Protocol;

namespace WarmupConsole.Midi.Listening;

/// <summary>The console's end of the listening process. What it says is raised on a thread of its own.</summary>
public sealed class EarClient(IPlayerLink link) : IDisposable
{
    private volatile bool _ends;

    /// <summary>A key or a controller.</summary>
    public event Action<MidiMessage>? Heard;

    /// <summary>A sentence for the director; true while an input is open.</summary>
    public event Action<string, bool>? Told;

    /// <summary>The process has ended unasked, with these last words; nothing comes after it.</summary>
    public event Action<string>? Ended;

    /// <summary>Begins; subscribe first.</summary>
    public void Start() => new Thread(Read) { IsBackground = true, Name = "from ear" }.Start();

    public void Dispose()
    {
        _ends = true;
        link.ToPlayer.Dispose();
        link.Dispose();
    }

    private void Read()
    {
        FrameReader reader = new(link.FromPlayer);
        try
        {
            while (reader.Read() is { } frame)
            {
                Take(frame);
            }
        }
        catch (Exception e) when (e is IOException or ObjectDisposedException or ProtocolException)
        {
            // The end of what it says is its end.
        }

        if (!_ends)
        {
            Ended?.Invoke(link.LastWords);
        }
    }

    private void Take(Frame frame)
    {
        switch (frame)
        {
            case Frame.Heard heard:
                Heard?.Invoke(heard.Message);
                break;
            case Frame.InputOpened opened:
                Told?.Invoke(opened.Sentence, true);
                break;
            case Frame.InputLost lost:
                Told?.Invoke(lost.Sentence, false);
                break;
        }
    }
}
