using WarmupConsole.Midi.Listening;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Tests.Support;

namespace WarmupConsole.Tests.Midi.Listening;

public sealed class NoteListenerTests
{
    private readonly VirtualClock _clock = new();

    [Fact]
    public void Notes_are_kept_with_the_times_of_press_and_release()
    {
        Assert.Equal(
            [(60, 0, 490), (62, 500, 740)],
            Heard(PlayedInput.Line((60, 500), (62, 250))));
    }

    [Fact]
    public void Keys_that_overlap_are_each_kept_and_one_struck_again_begins_anew() => Assert.Equal(
        [(60, 0, 300), (60, 300, 400), (64, 100, 500)],
        Heard((0, [0x90, 60, 70]), (100, [0x90, 64, 70]), (200, [0x90, 60, 70]), (100, [0x90, 60, 0]), (100, [0x80, 64, 64])));

    [Fact]
    public void A_key_still_down_at_the_end_is_let_go_then() => Assert.Equal([(60, 0, 200)], Heard((0, [0x90, 60, 70]), (200, [0xFE])));

    [Fact]
    public void Pedals_and_keys_let_go_that_were_never_pressed_are_no_notes() => Assert.Empty(Heard((0, [0xB0, 64, 127]), (5, [0x80, 60, 64])));

    [Fact]
    public void No_more_is_kept_than_a_line_can_hold() =>
        Assert.Equal(NoteListener.MostNotes, Heard([.. Enumerable.Repeat((1, new byte[] { 0x90, 60, 70 }), NoteListener.MostNotes + 50)]).Length);

    [Fact]
    public void The_input_is_closed_when_listening_ends()
    {
        PlayedInput input = new(_clock);
        using NoteListener listener = new(input, _clock);
        listener.Start();
        listener.Finish();
        Assert.True(input.IsClosed);
    }

    private (int Midi, int From, int To)[] Heard(params (int, byte[])[] messages)
    {
        PlayedInput input = new(_clock, messages);
        using NoteListener listener = new(input, _clock);
        input.Play();
        listener.Look();
        return [.. listener.Finish().Select(note => (note.Midi, Milliseconds(note.Start), Milliseconds(note.End)))];
    }

    private static int Milliseconds(WarmupConsole.Music.Rhythm.Moment moment) => (int)(moment.Nanoseconds / 1_000_000);
}
