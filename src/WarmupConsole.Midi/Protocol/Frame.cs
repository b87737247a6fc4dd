using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Playing;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Midi.Protocol;

/// <summary>What crosses the pipe between console and player; docs/player-protocol.md says what each means.</summary>
public abstract record Frame
{
    private Frame()
    {
    }

    public sealed record Hello(int Version) : Frame;

    public sealed record OpenPort(PortChoice Choice) : Frame;

    public sealed record SetTimeline(long Generation, Timeline Timeline) : Frame;

    public sealed record Notes(long Generation, IReadOnlyList<ScoreNote> List) : Frame;

    public sealed record Silence(long Generation) : Frame;

    public sealed record Quit : Frame;

    public sealed record Ready(int Version) : Frame;

    public sealed record PortOpened(string Sentence) : Frame;

    public sealed record PortFailed(string Sentence) : Frame;

    public sealed record PortLost(string Sentence) : Frame;

    public sealed record Silenced(long Generation, Moment At) : Frame;

    public sealed record Refused(string Sentence) : Frame;

    public sealed record Onsets(OnsetFigures Figures) : Frame;

    public sealed record Heard(MidiMessage Message) : Frame;

    public sealed record InputOpened(string Sentence) : Frame;

    public sealed record InputLost(string Sentence) : Frame;
}
