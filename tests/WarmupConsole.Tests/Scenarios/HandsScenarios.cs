using WarmupConsole.Music.Scales;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Hands;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Tui.Keys;

namespace WarmupConsole.Tests.Scenarios;

/// <summary>Pedals, played keys and follow mode through the real screen: bytes of a piano in; screen, MIDI and session log out.</summary>
public sealed class HandsScenarios
{
    private const byte Sustain = 64;
    private const byte Soft = 67;

    [Fact]
    public void A_pedal_is_learnt_kept_for_this_machine_shown_and_goes_on()
    {
        using Rehearsal room = new(width: 80, height: 24);
        Learn(room, '1').Tread(Sustain);
        Assert.Contains("Learnt: sustain means 'go on' on this machine.", room.Screen, StringComparison.Ordinal);
        Assert.Equal(LiveState.Ready, room.Session.State);
        Assert.Equal("sustain: go on", room.Composition.Settings.ReadSettings().Value!.Pedals.ToString());
        room.Tread(Sustain);
        Assert.Equal(LiveState.Introduce, room.Session.State);
        room.Do(ScreenCommand.Help);
        Assert.Contains("Pedals: sustain: go on.", room.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Silence_by_pedal_is_silence_and_a_pin_by_key_is_in_the_log()
    {
        using Rehearsal room = new(width: 80, height: 24);
        Learn(room, '4').Tread(Soft);
        Learn(room, '5').Play(21);
        room.LeadStep(7).Until(session => session.State == LiveState.Rung).Hear(0xB0, Soft, 127).Pass(TimeSpan.FromMilliseconds(50));
        Assert.Empty(room.Sounding);
        Assert.Equal(Hold.Silenced, room.Session.Hold);
        room.Play(21);
        Assert.True(Assert.Single(room.Session.Marks).IsPin);
        Assert.Equal("", Assert.Single(room.Logged.Select(record => record.Event).OfType<MarkMade>()).Raw);
    }

    [Fact]
    public void Unplugged_while_learning_nothing_is_learnt_and_that_is_told()
    {
        using Rehearsal room = new(width: 80, height: 24);
        Learn(room, '1').Hear(0xB0, Sustain, 127);
        room.Hands.Tell("The piano is gone.", isOpen: false);
        room.Pass(TimeSpan.FromMilliseconds(100));
        Assert.Contains("Nothing was learnt. The piano is gone.", room.Screen, StringComparison.Ordinal);
        room.Hands.Tell("Listening to the piano.", isOpen: true);
        room.Hear(0xB0, Sustain, 0).Tread(Sustain);
        Assert.Equal(Pedals.None, room.Composition.Settings.ReadSettings().Value!.Pedals);
        Assert.Equal(LiveState.Ready, room.Session.State);
    }

    [Fact]
    public void Floods_streams_and_garbage_press_nothing()
    {
        using Rehearsal room = new(width: 80, height: 24);
        Learn(room, '1').Tread(Sustain);
        Random random = new(9);
        byte[] garbage = [.. Enumerable.Range(0, 4000).Select(_ => (byte)random.Next(128))];
        room.Hear([0xF0, .. garbage, 0xF7, .. garbage, 0xFF, 0xF4, .. garbage]);
        room.Hear([.. Enumerable.Range(0, 60).SelectMany(value => new byte[] { 0xB0, Sustain, (byte)value })]);
        Assert.Equal(LiveState.Ready, room.Session.State);
    }

    [Fact]
    public void A_key_of_the_piano_answers_which_key_is_next()
    {
        using Rehearsal room = new(width: 80, height: 24);
        room.LeadStep(7).Until(session => session.State == LiveState.Rung).Play(39); // played before it is asked for, it is no answer
        room.Do(LiveAction.JumpToKey).Pass(TimeSpan.FromMilliseconds(100)).Play(39);
        Assert.Equal((LiveState.Cue, 63), (room.Session.State, room.Session.Rung!.Tonic.Midi));
    }

    [Fact]
    public void In_follow_mode_the_console_is_silent_recognises_each_key_announces_and_logs()
    {
        using Rehearsal room = new(width: 80, height: 24);
        room.Do(LiveAction.Follow).Do(LiveAction.GoOn);
        while (room.Session.StepIndex < 6)
        {
            room.Do(LiveAction.StepOn);
        }

        int sent = room.Sent.Count(message => (message.Bytes.Span[0] & 0xF0) == 0x90);
        int[] keys = [.. room.Session.Rungs.Take(3).Select(rung => rung.Tonic.Midi)];
        foreach (int tonic in keys)
        {
            room.Play(tonic - 12, tonic, tonic + 4, tonic + 7).Play(Line(room, tonic));
            Assert.Equal((LiveState.Follow, tonic), (room.Session.State, room.Session.Rung!.Tonic.Midi));
        }

        Assert.Contains("following", room.Screen, StringComparison.Ordinal);
        room.Play(keys[1] - 12, keys[1], keys[1] + 4, keys[1] + 7).Play(Line(room, keys[1]));
        Assert.Equal(keys[1], room.Session.Rung!.Tonic.Midi); // it turned round
        Assert.Equal(sent, room.Sent.Count(message => (message.Bytes.Span[0] & 0xF0) == 0x90));
        Assert.Equal([.. keys, keys[1]], room.Logged.Select(record => record.Event).OfType<RungStarted>().Select(rung => rung.Midi));
        Assert.Equal([true, true, true], room.Logged.Select(record => record.Event).OfType<RungEnded>().Select(rung => rung.Whole));
        SessionFacts folded = SessionFacts.Fold(room.Logged.Select(record => record.Event));
        Assert.Equal((room.Session.RungIndex, true), (folded.RungIndex, folded.Follows));
        room.Do(LiveAction.Follow).Until(session => session.State == LiveState.Rung);
        Assert.NotEmpty(room.Sounding);
    }

    /// <summary>A piano that sends back what it is sent: the console's own notes bind no key, press nothing, answer no prompt.</summary>
    [Fact]
    public void What_the_console_plays_and_a_piano_sends_back_is_nobody_who_plays()
    {
        using Rehearsal room = new(width: 80, height: 24);
        Learn(room, '4').Play(60);
        room.Loops = true;
        room.LeadStep(7).Until(session => session.State == LiveState.Rung);
        int first = room.Session.RungIndex;
        Learn(room, '5');
        room.Do(LiveAction.JumpToKey).Until(session => session.RungIndex > first && session.State == LiveState.Rung);

        Assert.Contains(room.Sent, sent => sent.Bytes.Span[0] == 0x90 && sent.Bytes.Span[1] == 60); // the bound key was among them
        Assert.Equal((Hold.None, first + 1), (room.Session.Hold, room.Session.RungIndex));
        Assert.Contains("to key", room.Screen, StringComparison.Ordinal);
        Assert.Equal("key 60: silence", room.Composition.Settings.ReadSettings().Value!.Pedals.ToString());

        room.Play(21); // what is really played is still learnt
        Assert.Equal("key 60: silence; key 21: pin", room.Composition.Settings.ReadSettings().Value!.Pedals.ToString());
    }

    [Fact]
    public void Following_where_nothing_is_heard_is_told_in_one_line_and_again_when_something_is()
    {
        using Rehearsal room = new(width: 80, height: 24);
        room.Hands.Tell("Nothing is heard: no MIDI input found. Connect and switch on the piano.", isOpen: false);
        room.Pass(TimeSpan.FromSeconds(1));
        Assert.DoesNotContain("Nothing is heard", room.Screen, StringComparison.Ordinal); // nobody asked for it yet
        room.Do(LiveAction.Follow).Pass(TimeSpan.FromSeconds(30));
        Assert.Contains("Nothing is heard: no MIDI input found. Connect and switch on the piano.", room.Screen, StringComparison.Ordinal);
        room.Hands.Tell("Listening to Stage piano.", isOpen: true);
        room.Pass(TimeSpan.FromSeconds(1));
        Assert.Contains("Listening to Stage piano.", room.Screen, StringComparison.Ordinal);
        room.Hands.Tell("Listening to the piano ended by itself. It is started again.", isOpen: false);
        room.Pass(TimeSpan.FromSeconds(30));
        Assert.Contains("Listening to the piano ended by itself. It is started again.", room.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_no_port_was_wanted_nothing_is_learnt_and_following_says_why()
    {
        using Rehearsal room = new(width: 80, height: 24);
        room.Hands.ListenToNothing("Nothing is heard: no port was wanted.");
        Learn(room, '1').Pass(TimeSpan.FromMilliseconds(100));
        Assert.Contains("Nothing was learnt. Nothing is heard: no port was wanted.", room.Screen, StringComparison.Ordinal);
        room.Do(LiveAction.Follow).Pass(TimeSpan.FromMilliseconds(100));
        Assert.Contains("Nothing is heard: no port was wanted.", room.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("learnt", room.Screen, StringComparison.Ordinal);
    }

    private static IEnumerable<int> Line(Rehearsal room, int tonic) => room.Session.Step!.Exercise.Pattern!.Notes.Where(note => note.Degree is not null)
        .Select(note => tonic + ModeData.IntervalOf(room.Session.Step.Exercise.Mode, note.Degree!.Value).Semitones);

    private static Rehearsal Learn(Rehearsal room, char use) => room.Do(ScreenCommand.LearnPedal).Type(use.ToString());
}
