using WarmupConsole.Midi.Listening;
using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Protocol;
using WarmupConsole.Midi.Timing;

namespace WarmupConsole.Tests.Midi.Listening;

/// <summary>What reaches the console from an input that floods, stutters, or comes and goes.</summary>
public sealed class EarTests
{
    private readonly VirtualClock _clock = new();
    private readonly List<Frame> _told = [];

    [Fact]
    public void Keys_and_controllers_are_told_and_nothing_else()
    {
        Hear("F0 7E 7F 09 01 F7 F8 FE B0 40 7F C0 05 90 3C 40 3C 00 E0 00 40 A0 3C 10 B0 40 00");
        Assert.Equal(
            [MidiMessage.Control(0, 64, 127), MidiMessage.NoteOn(0, 60, 64), new(MidiMessageKind.NoteOff, 0, 60, 0), MidiMessage.Control(0, 64, 0)],
            Heard);
    }

    [Fact]
    public void A_flood_of_system_exclusive_and_running_status_without_a_status_tell_nothing()
    {
        Random random = new(3);
        byte[] flood = [.. Enumerable.Range(0, 200_000).Select(at => at % 1000 == 0 ? (byte)0xF0 : (byte)random.Next(128))];
        Assert.Empty(Hear(new Bytes([flood[1..], flood])));
    }

    [Fact]
    public void More_than_anybody_can_play_is_passed_over_until_the_next_second()
    {
        byte[] flood = [0x90, .. Enumerable.Range(0, 3000).SelectMany(_ => new byte[] { 60, 64 })];
        Bytes input = new([flood]);
        Ear ear = new(() => new(input, "open"), _told.Add, _clock);
        Turn(ear, 40);
        Assert.Equal(Ear.MostInASecond, Heard.Count());
        _clock.MoveTo(_clock.Now + TimeSpan.FromSeconds(1));
        input.Add([0x90, 62, 64]);
        Turn(ear, 2);
        Assert.Equal(62, Heard.Last().Data1);
    }

    [Fact]
    public void An_input_that_is_gone_is_told_once_and_heard_again_when_it_is_back()
    {
        Bytes? there = new([[0x90, 60]]);
        Ear ear = new(() => there is null ? new(null, "Nothing is heard.") : new(there, "Listening."), _told.Add, _clock);
        Turn(ear, 3);
        there.IsThere = false;
        there = null;
        _clock.MoveTo(_clock.Now + TimeSpan.FromSeconds(1));
        Turn(ear, 5);
        there = new([[64, 0xB0, 64, 127]]); // what was half said is forgotten
        Turn(ear, 3);
        Assert.Equal(
            [
                new Frame.InputOpened("Listening."), new Frame.InputLost("test bytes is no longer heard: its cable or its power is gone. Pedals and keys act again once it is back."),
                new Frame.InputLost("Nothing is heard."), new Frame.InputOpened("Listening."), new Frame.Heard(MidiMessage.Control(0, 64, 127)),
            ],
            _told);
    }

    [Fact]
    public void Two_inputs_of_one_name_are_not_listened_to()
    {
        Assert.True(PortNames.AreAlike(["Stage piano 20:0", "Other 21:0", "Stage piano 24:0"], "Stage piano 20:0"));
        Assert.False(PortNames.AreAlike(["Stage piano 20:0", "Stage piano B 24:0"], "Stage piano 20:0"));
    }

    [Fact]
    public void The_process_ends_with_its_input_and_lets_go_of_the_device()
    {
        Bytes input = new([[0xB0, 64, 127]]);
        Assert.Equal(0, EarProcess.Run(Stream.Null, new MemoryStream(), () => new(input, "Listening."), _clock));
        Assert.True(input.IsClosed);
    }

    private IEnumerable<MidiMessage> Heard => _told.OfType<Frame.Heard>().Select(heard => heard.Message);

    private void Hear(string bytes) => Hear(new Bytes([Hex.Bytes(bytes)]));

    private IEnumerable<MidiMessage> Hear(Bytes input)
    {
        Ear ear = new(() => new(input, "open"), _told.Add, _clock);
        Turn(ear, 2 + (input.Left / 256));
        return Heard;
    }

    private static void Turn(Ear ear, int times)
    {
        for (int turn = 0; turn < times; turn++)
        {
            ear.Turn();
        }
    }

    /// <summary>Bytes that have all come; more may be added.</summary>
    private sealed class Bytes(byte[][] pieces) : IMidiInput
    {
        private readonly Queue<byte> _bytes = new(pieces.SelectMany(piece => piece));

        public string Name => "test bytes";

        public bool IsThere { get; set; } = true;

        internal bool IsClosed { get; private set; }

        internal int Left => _bytes.Count;

        internal void Add(byte[] more) => Array.ForEach(more, _bytes.Enqueue);

        public int Take(Span<byte> bytes)
        {
            int count = 0;
            while (count < bytes.Length && _bytes.TryDequeue(out byte next))
            {
                bytes[count++] = next;
            }

            return count;
        }

        public void Await(TimeSpan most)
        {
        }

        public void Close() => IsClosed = true;
    }
}
