using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Tests.Midi.Player;

public class DriftTests
{
    private const int Changes = 90;
    private const int BeatsOfOneTempo = 60;
    private const int NotesOfOneTempo = BeatsOfOneTempo * 3;
    private const long ThirdOfABeat = Beats.TicksPerBeat / 3;
    private const long TicksOfOneTempo = BeatsOfOneTempo * Beats.TicksPerBeat;

    /// <summary>
    /// The bound: what is due is rounded up to the next nanosecond, and so is the beat at which a tempo changes. So after n changes
    /// a note is at most n + 1 ns late, and never early: 91 ns after the hour and a quarter of this test.
    /// </summary>
    [Fact]
    public void Over_an_hour_with_ninety_changes_of_tempo_no_note_is_a_microsecond_off()
    {
        VirtualClock clock = new();
        RecordingPort port = new(clock);
        using InProcessPlayer player = new(clock, _ => new(port, true, ""));
        player.Open(PortChoice.First);
        decimal[] ideal = [.. Lead(player, clock)];

        Moment[] onsets = [.. port.Sent.Where(message => message.Bytes.Span[0] == 0x90).Select(message => message.At)];
        Assert.InRange(onsets.Length, ideal.Length, ideal.Length + 1); // the one on the last beat of all
        Assert.True(onsets[^1] - onsets[0] > TimeSpan.FromHours(1));
        Assert.All(onsets.Zip(ideal).Index(), note =>
        {
            int changes = (int)(note.Index * ThirdOfABeat / TicksOfOneTempo);
            Assert.InRange(note.Item.First.Nanoseconds - note.Item.Second, 0, changes + 1);
        });
    }

    /// <summary>Plays three notes a beat, and changes the tempo somewhere within a tick; gives the exact moment of each note.</summary>
    private static List<decimal> Lead(InProcessPlayer player, VirtualClock clock)
    {
        List<decimal> ideal = [];
        decimal origin = 0;
        Timeline timeline = new(TempoOf(0), Beats.Zero, clock.Now);
        player.Play(1, [.. Enumerable.Range(0, (Changes + 1) * NotesOfOneTempo).Select(third => new ScoreNote(60, new(third * ThirdOfABeat), new(200), 64))]);
        for (int part = 0; part <= Changes; part++)
        {
            timeline = part == 0 ? timeline : timeline.WithTempo(TempoOf(part), clock.Now);
            player.SetTimeline(1, timeline);
            decimal tick = 60_000_000_000_000m / TempoOf(part).MilliBeatsPerMinute / Beats.TicksPerBeat;
            ideal.AddRange(Enumerable.Range(0, NotesOfOneTempo).Select(third => origin + (third * ThirdOfABeat * tick)));
            origin += TicksOfOneTempo * tick;
            player.Advance(timeline.TimeAt(new((part + 1) * TicksOfOneTempo)) + TimeSpan.FromMicroseconds(7 * (part % 20)));
        }

        return ideal;
    }

    /// <summary>None of them divides a minute evenly.</summary>
    private static Tempo TempoOf(int part) => Tempo.FromMilliBeatsPerMinute(60_007 + (part * 7919 % 50_000));
}
