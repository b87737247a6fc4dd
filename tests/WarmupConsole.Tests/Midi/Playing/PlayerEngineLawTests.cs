using CsCheck;
using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Protocol;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;
using static WarmupConsole.Tests.Midi.Playing.EngineBench;

namespace WarmupConsole.Tests.Midi.Playing;

/// <summary>What holds for any order of notes, tempi, silences and late wakes. CsCheck prints the seed of a failure.</summary>
public class PlayerEngineLawTests
{
    private const int Rounds = 300;

    private static readonly Gen<ScoreNote> AnyNote =
        from midi in Gen.Int[58, 63]
        from start in Gen.Long[-960, 20_000]
        from length in Gen.Long[1, 3_000]
        from velocity in Gen.Int[1, 127]
        select new ScoreNote(midi, new(start), new(length), velocity);

    // A step: 0 notes, 1 a new tempo, 2 silence, 3 a wake that may be late, 4 running on time.
    private static readonly Gen<(int Kind, ScoreNote[] Notes, int Number)> AnyStep = Gen.Select(Gen.Int[0, 4], AnyNote.Array[0, 12], Gen.Int[20, 300]);

    [Fact]
    public void After_everything_has_ended_nothing_sounds_and_each_note_on_had_one_note_off() => AnyStep.Array[1, 20].Sample(
        steps =>
        {
            EngineBench bench = After(steps);
            bench.RunTo(bench.Now.Nanoseconds / 1e9 + 10_000);
            return Sounding(bench.Sent).Count == 0 && bench.Engine.NextDue is null;
        },
        iter: Rounds);

    [Fact]
    public void After_a_silence_nothing_sounds_and_nothing_older_is_due() => AnyStep.Array[1, 20].Sample(
        steps =>
        {
            EngineBench bench = After(steps);
            bench.Handle(new Frame.Silence(1_000));
            return Sounding(bench.Sent).Count == 0 && bench.Engine.NextDue is null;
        },
        iter: Rounds);

    [Fact]
    public void After_the_end_nothing_sounds() => AnyStep.Array[1, 20].Sample(
        steps =>
        {
            EngineBench bench = After(steps);
            bench.Engine.End();
            return Sounding(bench.Sent).Count == 0;
        },
        iter: Rounds);

    [Fact]
    public void Messages_ascend_in_time_and_the_next_due_time_is_never_before_what_was_done() => AnyStep.Array[1, 20].Sample(
        steps =>
        {
            EngineBench bench = After(steps);
            bool ascending = bench.Sent.Zip(bench.Sent.Skip(1)).All(pair => pair.First.At <= pair.Second.At);
            bench.Engine.RunDue(bench.Now);
            return ascending && !(bench.Engine.NextDue <= bench.Now);
        },
        iter: Rounds);

    [Fact]
    public void On_time_every_note_begins_at_the_moment_that_the_timeline_says() => AnyNote.Array[1, 60].Sample(
        notes =>
        {
            ScoreNote[] positive = [.. notes.Where(n => n.Start >= Beats.Zero)];
            EngineBench bench = new();
            bench.Play(0, positive);
            bench.RunTo(10_000);
            var expected = positive.Select(n => (AtSixty.TimeAt(n.Start), n.Midi, n.Velocity)).Order();
            return expected.SequenceEqual(Onsets(bench.Sent).Order());
        },
        iter: Rounds);

    private static EngineBench After((int Kind, ScoreNote[] Notes, int Number)[] steps)
    {
        EngineBench bench = new();
        Timeline timeline = AtSixty;
        long generation = 0;
        foreach ((int kind, ScoreNote[] notes, int number) in steps)
        {
            double now = bench.Now.Nanoseconds / 1e9;
            switch (kind)
            {
                case 0:
                    bench.Play(generation, notes);
                    break;
                case 1:
                    timeline = timeline.WithTempo(Tempo.FromBeatsPerMinute(number), bench.Now);
                    bench.Handle(new Frame.SetTimeline(generation, timeline));
                    break;
                case 2:
                    bench.Handle(new Frame.Silence(++generation));
                    break;
                case 3:
                    bench.WakeLateAt(now + (number / 100.0));
                    break;
                default:
                    bench.RunTo(now + (number / 100.0));
                    break;
            }
        }

        return bench;
    }

    /// <summary>What a receiver hears at the end; a note-on for a pitch that sounds, or an off for one that does not, is a fault.</summary>
    private static HashSet<int> Sounding(IReadOnlyList<TimedMessage> sent)
    {
        HashSet<int> sounding = [];
        foreach (TimedMessage timed in sent)
        {
            Assert.True(MidiMessage.TryDecode(timed.Bytes.Span, out MidiMessage message));
            Assert.True(message.Kind switch
            {
                MidiMessageKind.NoteOn => sounding.Add(message.Data1),
                MidiMessageKind.NoteOff => sounding.Remove(message.Data1),
                _ => true,
            });
        }

        return sounding;
    }

    private static IEnumerable<(Moment At, int Pitch, int Velocity)> Onsets(IReadOnlyList<TimedMessage> sent) =>
        from timed in sent
        let message = MidiMessage.TryDecode(timed.Bytes.Span, out MidiMessage m) ? m : default
        where message.Kind == MidiMessageKind.NoteOn
        select (timed.At, message.Data1, message.Data2);
}
