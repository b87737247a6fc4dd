using WarmupConsole.Midi.Playing;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Protocol;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Tests.Midi.Playing;

/// <summary>An engine with a recording port, at 60 beats a minute from moment 0: a beat is a second, beat b falls on second b.</summary>
internal sealed class EngineBench
{
    private readonly VirtualClock _clock = new();
    private readonly List<RecordingPort> _ports = [];

    internal EngineBench()
    {
        Engine = new(_ =>
        {
            _ports.Add(new(_clock));
            return new(_ports[^1], true, "open");
        });
        Handle(new Frame.OpenPort(PortChoice.First));
        Handle(new Frame.SetTimeline(0, AtSixty));
    }

    internal static Timeline AtSixty => new(Tempo.FromBeatsPerMinute(60), Beats.Zero, new(0));

    internal PlayerEngine Engine { get; }

    internal Moment Now => _clock.Now;

    internal IReadOnlyList<TimedMessage> Sent => [.. _ports.SelectMany(port => port.Sent)];

    /// <summary>"0.5 90 3C 40" for each message after the opening one: seconds, bytes.</summary>
    internal string[] Log => [.. Sent.Skip(1).Select(m => FormattableString.Invariant($"{m.At.Nanoseconds / 1e9:0.###} {Hex.Of(m.Bytes.Span)}"))];

    internal static ScoreNote Note(int midi, double start, double length, int velocity = 64) =>
        new(midi, new((long)(start * Beats.TicksPerBeat)), new((long)(length * Beats.TicksPerBeat)), velocity);

    internal static Moment Second(double seconds) => new((long)Math.Round(seconds * 1e9));

    internal Frame? Handle(Frame frame) => Engine.Handle(frame, _clock.Now);

    internal Frame? Play(long generation, params ScoreNote[] notes) => Handle(new Frame.Notes(generation, notes));

    /// <summary>Wakes at each due time.</summary>
    internal void RunTo(double seconds)
    {
        while (Engine.NextDue is { } due && due <= Second(seconds))
        {
            _clock.MoveTo(due);
            Engine.RunDue(_clock.Now);
        }

        _clock.MoveTo(Second(seconds));
    }

    /// <summary>Sleeps over everything and wakes late.</summary>
    internal void WakeLateAt(double seconds)
    {
        _clock.MoveTo(Second(seconds));
        Engine.RunDue(_clock.Now);
    }
}
