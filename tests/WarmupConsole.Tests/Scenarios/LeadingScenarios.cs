using WarmupConsole.Midi.Ports;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Tests.App;
using WarmupConsole.Tui.Keys;

namespace WarmupConsole.Tests.Scenarios;

/// <summary>A director leads; keys go in, and screen, piano and log are looked at together.</summary>
public sealed class LeadingScenarios
{
    [Fact]
    public void What_the_log_folds_to_is_what_the_screen_shows()
    {
        using Rehearsal room = new();
        room.LeadStep(7).Pass(TimeSpan.FromSeconds(20)).Type("a f").Do(ScreenCommand.KeepMark).Do(LiveAction.TurnRound).Pass(TimeSpan.FromSeconds(9));
        Assert.Equivalent(SessionFacts.Fold(room.Logged.Select(record => record.Event)), room.Session.Facts());
    }

    [Fact]
    public void The_cue_chord_sounds_on_the_beat_and_the_first_rung_follows_it()
    {
        using Rehearsal room = new();
        room.LeadStep(4);
        Moment start = room.Clock.Now;
        room.Until(session => session.State == LiveState.Rung).Pass(TimeSpan.FromMilliseconds(50));
        Moment[] onsets = [.. NoteOns(room).Select(on => on.At).Distinct().Order()];
        Assert.Equal([start, new(start.Nanoseconds + room.Session.Tempo.NanosecondsOf(StepTiming.Cue + StepTiming.CountIn))], onsets[..2]);
    }

    [Theory]
    [InlineData("none", false)]
    [InlineData("count-in", false)]
    [InlineData("every-beat", true)]
    public void Through_a_whole_evening_taps_count_every_step_in_before_its_first_key(string click, bool throughout)
    {
        using ToolRun tool = new();
        string plan = tool.PathOf("plans/2027-02-09.yaml");
        tool.Put("plans/2027-02-09.yaml", File.ReadAllText(plan).Replace("advance: rolling", $"advance: rolling\npiano: {{click: {click}}}", StringComparison.Ordinal));
        using Rehearsal room = new(plan);
        room.Do(LiveAction.GoOn);
        foreach (WarmupStep step in room.Session.Warmup.Steps)
        {
            (Moment start, int sent, int keys) = (room.Clock.Now, room.Sent.Count, room.Session.Rungs.Count);
            room.LeadToItsEnd();

            Moment Beat(int beat) => new(start.Nanoseconds + step.Tempo.NanosecondsOf(Beats.FromBeats(beat)));
            (Moment At, bool IsTap)[] given = [.. NoteOns(room, sent).Select(on => (on.At, on.Bytes.Span[1] == 108))];
            Moment[] taps = [.. given.Where(note => note.IsTap).Select(note => note.At)];
            int inKeys = throughout && step.Exercise.Pattern is { } pattern ? keys * (int)Math.Ceiling((double)pattern.Length.Ticks / Beats.TicksPerBeat) : 0;
            Assert.Equal(click == "none" || keys == 0 ? 0 : 2 + inKeys, taps.Length);
            Assert.All(taps.Take(2).Index(), tap => Assert.Equal(Beat(2 + tap.Index), tap.Item));
            Assert.All(taps.Skip(2), tap => Assert.True(tap >= Beat(4)));
            Moment[] chordAndKey = keys == 0 ? [] : [Beat(0), Beat(4)];
            Assert.Equal(chordAndKey, given.Where(note => !note.IsTap).Select(note => note.At).Distinct().Take(2));
        }

        Assert.Equal(LiveState.Finished, room.Session.State);
    }

    [Fact]
    public void A_tapped_tempo_is_shown_and_logged_and_the_music_goes_on_in_it()
    {
        using Rehearsal room = new();
        room.LeadStep(7).Until(session => session.State == LiveState.Rung).Do(LiveAction.TapTempo);
        foreach (int tap in Enumerable.Range(0, 3))
        {
            Assert.Contains("tapping", room.Screen, StringComparison.Ordinal);
            room.Pass(TimeSpan.FromMilliseconds(750)).Do(LiveAction.TapTempo);
        }

        Assert.Contains("tapped: 80 bpm", room.Screen, StringComparison.Ordinal);
        Assert.Contains("♩=80 ", room.Screen, StringComparison.Ordinal);
        Assert.Equal(80_000, room.Logged.Select(record => record.Event).OfType<TimelineChanged>().Last().MilliBpm);
        Assert.Equal(Hold.None, room.Session.Hold);
    }

    [Fact]
    public void Marking_while_it_sounds_stops_nothing_and_is_confirmed_once_saved()
    {
        using Rehearsal room = new();
        room.LeadStep(9).Until(session => session.State == LiveState.Rung);
        int sentBefore = room.Sent.Count;
        room.Type("altos flat in E");
        Assert.Contains("altos flat in E", room.Screen, StringComparison.Ordinal);
        room.Pass(TimeSpan.FromSeconds(3));
        Assert.True(room.Sent.Count > sentBefore, "The piano fell silent while the mark was typed.");
        room.Do(ScreenCommand.KeepMark);
        MarkMade mark = Assert.Single(room.Logged.Select(record => record.Event).OfType<MarkMade>());
        Assert.Equal(("altos flat in E", "flat", "E4", true), (mark.Raw, mark.Kind, mark.Key, mark.KeyNamed));
        Assert.Equal(["alto"], mark.Parts);
        Assert.True(room.Session.Marks[0].IsFlushed);
        Assert.Contains("altos flat in E, saved", room.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Pins_cost_one_key_and_get_their_words_when_there_is_time()
    {
        using Rehearsal room = new();
        room.LeadStep(7).Until(session => session.State == LiveState.Rung).Do(ScreenCommand.Pin).Until(session => session.RungIndex == 2);
        room.Type("a").Do(KeyTable.Rows.Last(row => row.Command == ScreenCommand.Pin)).Do(ScreenCommand.TakeSuggestion);
        Assert.Equal(["", "", "altos flat"], room.Session.Marks.Select(mark => mark.Content.Raw));
        Assert.Contains("2 without words", room.Screen, StringComparison.Ordinal);
        room.Do(LiveAction.End);
        Assert.Contains("Pins without words: 2", room.Screen, StringComparison.Ordinal);
        room.Do(ScreenCommand.SayPin);
        Assert.Contains("key 1: ", room.Screen, StringComparison.Ordinal);
        room.Type("b late").Do(ScreenCommand.KeepMark).Do(ScreenCommand.SayPin).Type("t good").Do(ScreenCommand.KeepMark);
        Assert.Equal([(0, "b late"), (2, "t good")], room.Session.Marks.Skip(1).Select(mark => (mark.Anchor.Rung, mark.Content.Raw)));
        Assert.Equal([1, 2], room.Logged.Select(record => record.Event).OfType<MarkWorded>().Select(worded => worded.Id));
        Assert.Contains("What next", room.Screen, StringComparison.Ordinal);
        Assert.Contains("There is no pin", room.Do(ScreenCommand.SayPin).Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mark_belongs_to_the_rung_of_its_first_letter()
    {
        using Rehearsal room = new();
        room.LeadStep(7).Until(session => session.State == LiveState.Rung).Type("t sharp").Until(session => session.RungIndex == 2);
        room.Do(ScreenCommand.KeepMark);
        Assert.Equal(0, room.Session.Marks[0].Anchor.Rung);
        room.Type("b late").Do(ScreenCommand.KeepMark).Do(ScreenCommand.MoveMarkBack);
        Assert.Equal((1, true), (room.Session.Marks[1].Anchor.Rung, room.Session.Marks[1].IsFlushed));
        room.Do(ScreenCommand.UndoMark);
        Assert.Single(room.Session.Marks);
        Assert.Equal(2, Assert.Single(room.Logged.Select(record => record.Event).OfType<MarkUndone>()).Id);
    }

    [Fact]
    public void Silence_with_the_mark_line_open_is_silent_at_once_and_keeps_the_line()
    {
        using Rehearsal room = new();
        room.LeadStep(7).Until(session => session.State == LiveState.Rung).Pass(TimeSpan.FromMilliseconds(300)).Type("sop");
        Assert.NotEmpty(room.Sounding);
        room.Do(LiveAction.Silence);
        Assert.Empty(room.Sounding);
        Assert.Equal(["B04000", "B07B00", "B07800"], room.Sent.TakeLast(3).Select(sent => Convert.ToHexString(sent.Bytes.Span)));
        Assert.Contains("sop", room.Screen, StringComparison.Ordinal);
        int sent = room.Sent.Count;
        room.Pass(TimeSpan.FromSeconds(30));
        Assert.Equal(sent, room.Sent.Count);
        Assert.Equal(Hold.Silenced, room.Session.Hold);
    }

    [Fact]
    public void A_pause_stops_clocks_and_music_and_leads_in_to_the_same_key()
    {
        using Rehearsal room = new();
        room.LeadStep(7).Until(session => session.RungIndex == 1 && session.State == LiveState.Rung).Do(LiveAction.Pause);
        TimeSpan spent = room.Session.Clocks.WholeAt(room.Clock.Now);
        Assert.Empty(room.Sounding);
        room.Pass(TimeSpan.FromMinutes(2));
        Assert.Equal(spent, room.Session.Clocks.WholeAt(room.Clock.Now));
        room.Do(LiveAction.GoOn).Pass(TimeSpan.FromMilliseconds(100));
        Assert.Equal((LiveState.Cue, 1), (room.Session.State, room.Session.RungIndex));
        Assert.NotEmpty(room.Sounding);
    }

    [Fact]
    public void Repeat_back_and_turning_round_are_one_key_each()
    {
        using Rehearsal room = new();
        room.LeadStep(7).Until(session => session.RungIndex == 2 && session.State == LiveState.Rung).Do(LiveAction.Repeat);
        Assert.Equal((LiveState.Cue, 2), (room.Session.State, room.Session.RungIndex));
        room.Do(LiveAction.TurnRound);
        Assert.Equal([60, 61, 62, 61, 60], room.Session.Rungs.Select(rung => rung.Tonic.Midi));
        room.Do(LiveAction.StepBack);
        Assert.Equal((LiveState.Introduce, 5), (room.Session.State, room.Session.StepIndex));
        Assert.Empty(room.Sounding);
    }

    [Fact]
    public void Without_a_port_the_screen_says_so_and_the_run_goes_on()
    {
        using Rehearsal room = new(hasPort: false);
        room.LeadStep(4).Until(session => session.RungIndex == 1);
        Assert.Contains("Nothing sounds: no port.", room.Screen, StringComparison.Ordinal);
        Assert.Contains(room.Logged, record => record.Event is RungEnded { Whole: true });
    }

    [Fact]
    public void When_the_log_cannot_be_written_the_run_goes_on_and_marks_are_kept_for_elsewhere()
    {
        using Rehearsal room = new(canLog: false);
        room.LeadStep(4).Until(session => session.State == LiveState.Rung).Type("b dark").Do(ScreenCommand.KeepMark);
        Assert.Contains("the disk is read-only", room.Screen, StringComparison.Ordinal);
        Assert.False(room.Session.Marks[0].IsFlushed);
        room.Until(session => session.RungIndex == 2);
        Assert.True(room.IsUnsaved);

        string elsewhere = Path.Combine(room.Composition.CurrentFolder, "saved.jsonl");
        Assert.Null(room.LogThread.SaveElsewhere(elsewhere));
        SessionLog saved = SessionLogFile.Read(elsewhere).Value!;
        Assert.Empty(saved.Damages);
        Assert.Equal("b dark", Assert.Single(saved.Records.Select(record => record.Event).OfType<MarkMade>()).Raw);
    }

    [Fact]
    public void A_port_opened_is_silenced_before_anything_is_played()
    {
        using Rehearsal room = new();
        Assert.Equal(["C000", "B04000", "B07B00", "B07800"], room.Sent.Select(sent => Convert.ToHexString(sent.Bytes.Span)));
    }

    [Fact]
    public void Leaving_in_the_middle_asks_once()
    {
        using Rehearsal room = new();
        room.LeadStep(4).Do(ScreenCommand.Leave);
        Assert.Contains("again leaves", room.Screen, StringComparison.Ordinal);
    }

    private static IEnumerable<TimedMessage> NoteOns(Rehearsal room, int from = 0) =>
        room.Sent.Skip(from).Where(sent => (sent.Bytes.Span[0] & 0xF0) == 0x90 && sent.Bytes.Span[2] > 0);
}
