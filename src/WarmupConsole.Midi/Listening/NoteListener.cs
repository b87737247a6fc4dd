using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Midi.Listening;

/// <summary>Keeps what is played on an input, with its times, until it is asked for; a thread of its own looks every two milliseconds.</summary>
public sealed class NoteListener(IMidiInput input, IMonotonicClock clock) : IDisposable
{
    /// <summary>More than this is no line of an exercise; what follows is not kept.</summary>
    public const int MostNotes = 1000;

    private static readonly TimeSpan BetweenLooks = TimeSpan.FromMilliseconds(2);

    private readonly MessageAssembler _assembler = new();
    private readonly List<PlayedNote> _notes = [];
    private readonly Dictionary<int, Moment> _down = [];
    private readonly ManualResetEvent _ends = new(false);
    private Thread? _thread;

    public void Start()
    {
        _thread = new Thread(Run) { IsBackground = true, Name = "piano listener" };
        _thread.Start();
    }

    /// <summary>Takes what has arrived by now.</summary>
    public void Look()
    {
        Span<byte> bytes = stackalloc byte[256];
        int count;
        while ((count = input.Take(bytes)) > 0)
        {
            foreach (byte next in bytes[..count])
            {
                Hear(_assembler.Take(next));
            }
        }
    }

    /// <summary>Ends listening; what was played, in the order the keys were let go. A key still down is let go now.</summary>
    public IReadOnlyList<PlayedNote> Finish()
    {
        End();
        foreach (int midi in _down.Keys.Order().ToArray())
        {
            LetGo(midi);
        }

        return _notes;
    }

    public void Dispose() => End();

    private void End()
    {
        _ends.Set();
        _thread?.Join();
        _thread = null;
        Look();
        input.Close();
    }

    private void Run()
    {
        while (!_ends.WaitOne(BetweenLooks))
        {
            Look();
        }
    }

    private void Hear(MidiMessage? heard)
    {
        if (heard is not { Kind: MidiMessageKind.NoteOn or MidiMessageKind.NoteOff } message)
        {
            return;
        }

        LetGo(message.Data1);
        if (message.Kind == MidiMessageKind.NoteOn)
        {
            _down.Add(message.Data1, clock.Now);
        }
    }

    private void LetGo(int midi)
    {
        if (_down.Remove(midi, out Moment start) && _notes.Count < MostNotes)
        {
            _notes.Add(new(midi, start, clock.Now));
        }
    }
}
