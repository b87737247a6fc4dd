using System.ComponentModel;
using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Timing;

namespace WarmupConsole.Midi.Listening;

/// <summary>
/// A listening process that is started again when it ends unasked: whoever leads with one hand on the piano cannot start anything.
/// Each end is told, and whether it goes on. What it hears and says is raised on threads of its own.
/// </summary>
/// <param name="start">Starts a listening process.</param>
/// <param name="clock">Measures how often that happens.</param>
public sealed class RestartingEar(Func<EarClient> start, IMonotonicClock clock) : IDisposable
{
    private readonly Lock _lock = new();
    private readonly RestartLimit _limit = new(clock);
    private EarClient? _ear;
    private bool _disposed;

    /// <summary>A key or a controller.</summary>
    public event Action<MidiMessage>? Heard;

    /// <summary>A sentence for the director; true while an input is open.</summary>
    public event Action<string, bool>? Told;

    /// <summary>Begins; subscribe first. Where it cannot, that is told.</summary>
    public void Start()
    {
        if (TryStart() is not { } ear)
        {
            return;
        }

        ear.Heard += message => Heard?.Invoke(message);
        ear.Told += (sentence, isOpen) => Told?.Invoke(sentence, isOpen);
        ear.Ended += lastWords => Replace(ear, lastWords);
        lock (_lock)
        {
            if (!_disposed)
            {
                _ear = ear;
                ear.Start();
                return;
            }
        }

        ear.Dispose();
    }

    public void Dispose()
    {
        EarClient? ear;
        lock (_lock)
        {
            (ear, _ear, _disposed) = (_ear, null, true);
        }

        ear?.Dispose();
    }

    /// <summary>On the thread of the process that has ended, which has nothing else to do any more.</summary>
    private void Replace(EarClient ended, string lastWords)
    {
        bool again;
        lock (_lock)
        {
            if (_disposed)
            {
                return;
            }

            _ear = null;
            again = _limit.MayStartAgain();
        }

        Told?.Invoke(again ? ListeningTexts.StartsAgain(lastWords) : ListeningTexts.GivenUp(lastWords), false);
        ended.Dispose();
        if (again)
        {
            Start();
        }
    }

    private EarClient? TryStart()
    {
        try
        {
            return start();
        }
        catch (Exception e) when (e is Win32Exception or IOException or InvalidOperationException)
        {
            Told?.Invoke(ListeningTexts.NotStarted(e.Message), false);
            return null;
        }
    }
}
