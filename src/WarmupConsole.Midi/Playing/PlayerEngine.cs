using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Protocol;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Midi.Playing;

/// <summary>
/// Decides what is sent when. It has no thread and reads no clock; docs/player-protocol.md states its rules.
/// Queued notes are kept in beats and become moments only when looked at, so a new timeline needs no rearranging.
/// </summary>
public sealed class PlayerEngine(Func<PortChoice, PortOpening> openPort)
{
    /// <summary>Later than this, a note is dropped unless half of it is still to come.</summary>
    public static readonly TimeSpan LatenessAllowed = TimeSpan.FromMilliseconds(100);

    private readonly NoteQueue _waiting = new();
    private readonly SoundingNotes _sounding = new();
    private readonly OnsetErrors _errors = new();
    private readonly PianoPort _port = new(openPort);
    private Timeline? _timeline;
    private long _generation;

    /// <summary>When <see cref="RunDue"/> has something to do; null when nothing waits.</summary>
    public Moment? NextDue => _timeline is { } timeline && FirstTick is { } tick ? timeline.TimeAt(new(tick)) : null;

    /// <summary>What a <see cref="PortWatcher"/> is to look for; may be read by any thread.</summary>
    public PortWatch? Watched => _port.Watched;

    public OnsetFigures Onsets => _errors.Figures();

    private long? FirstTick => EndsFirst ? _sounding.FirstEnd : _waiting.FirstTick;

    // At one tick ends go first, or a note struck again would be ended by the one before it.
    private bool EndsFirst => _sounding.FirstEnd is { } end && !(_waiting.FirstTick < end);

    /// <summary>Takes a frame from the host.</summary>
    /// <returns>What is to be reported, if anything.</returns>
    public Frame? Handle(Frame frame, Moment now) => frame switch
    {
        Frame.OpenPort open => Open(open.Choice),
        Frame.SetTimeline timeline => Use(timeline),
        Frame.Notes notes => Queue(notes),
        Frame.Silence silence => Silence(silence.Generation, now),
        _ => new Frame.Refused(PlayingTexts.NotForPlayer(frame)),
    };

    /// <summary>Sends everything that is due.</summary>
    /// <returns>A report when the port was lost.</returns>
    public Frame? RunDue(Moment now)
    {
        while (NextDue is { } due && due <= now)
        {
            if (EndsFirst)
            {
                EndNote();
            }
            else
            {
                BeginNote(due, now);
            }
        }

        return _port.TakeLoss();
    }

    /// <summary>Lets a port go or opens it again, as the watcher saw.</summary>
    /// <returns>A report when something changed.</returns>
    public Frame? Take(PortSight sight) => _port.Take(sight);

    /// <summary>Silences and closes the port.</summary>
    /// <returns>Null, or a sentence about what could not be finished.</returns>
    public string? End()
    {
        SilenceAll();
        return _port.Close();
    }

    private Frame Open(PortChoice choice) => _port.Open(choice, End());

    private Frame? Use(Frame.SetTimeline frame)
    {
        if (frame.Generation >= _generation)
        {
            _timeline = frame.Timeline;
        }

        return null;
    }

    private Frame.Refused? Queue(Frame.Notes frame) =>
        frame.Generation < _generation || _waiting.TryAdd(frame.Generation, frame.List)
            ? null
            : new Frame.Refused(PlayingTexts.QueueFull(frame.List.Count, _waiting.Count));

    private Frame Silence(long generation, Moment now)
    {
        _generation = Math.Max(_generation, generation);
        SilenceAll();
        _waiting.Forget(_generation);
        return _port.TakeLoss() ?? new Frame.Silenced(generation, now);
    }

    private void SilenceAll()
    {
        for (int pitch = 0; pitch <= 127; pitch++)
        {
            if (_sounding.Holds(pitch))
            {
                _port.Send(MidiMessage.NoteOff(MidiConstants.PianoChannel, pitch));
            }
        }

        _sounding.Clear();
        foreach (MidiMessage message in Panic.Messages)
        {
            _port.Send(message);
        }
    }

    private void EndNote()
    {
        if (_sounding.End(out byte pitch))
        {
            _port.Send(MidiMessage.NoteOff(MidiConstants.PianoChannel, pitch));
        }
    }

    private void BeginNote(Moment due, Moment now)
    {
        QueuedNote note = _waiting.TakeFirst();
        if (_sounding.IsFull || IsTooLate(note, due, now))
        {
            _errors.Dropped();
            return;
        }

        if (_sounding.Holds(note.Pitch))
        {
            _port.Send(MidiMessage.NoteOff(MidiConstants.PianoChannel, note.Pitch));
        }

        _port.Send(MidiMessage.NoteOn(MidiConstants.PianoChannel, note.Pitch, note.Velocity));
        _sounding.Begin(note.Pitch, note.OffTick);
        _errors.Played(now.Nanoseconds - due.Nanoseconds);
    }

    private bool IsTooLate(QueuedNote note, Moment due, Moment now)
    {
        long middle = note.OnTick + ((note.OffTick - note.OnTick) / 2);
        return now - due > LatenessAllowed && _timeline?.TimeAt(new(middle)) < now;
    }
}
