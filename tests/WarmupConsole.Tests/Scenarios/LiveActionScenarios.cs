using System.Text.Json;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Tui.Keys;

namespace WarmupConsole.Tests.Scenarios;

/// <summary>The rarer actions through the real screen: what is typed in a prompt, what sounds, what the log holds.</summary>
public sealed class LiveActionScenarios
{
    [Fact]
    public void A_key_is_named_in_a_prompt_and_the_music_goes_on_until_it_is_given()
    {
        using Rehearsal room = new(width: 80, height: 24);
        room.LeadStep(7).Until(session => session.State == LiveState.Rung);
        int sent = room.Sent.Count;
        room.Do(LiveAction.JumpToKey).Type("eb");
        Assert.Contains("to key eb", room.Screen, StringComparison.Ordinal);
        room.Pass(TimeSpan.FromSeconds(2));
        Assert.True(room.Sent.Count > sent, "The piano fell silent while the key was typed.");
        room.Do(ScreenCommand.KeepMark);
        Assert.Equal((LiveState.Cue, 63), (room.Session.State, room.Session.Rung!.Tonic.Midi));
        Assert.Empty(room.Session.Marks);
        AssertFolds(room);
    }

    [Fact]
    public void What_no_prompt_understands_changes_nothing_and_an_example_is_given()
    {
        using Rehearsal room = new(width: 80, height: 24);
        room.LeadStep(7).Until(session => session.State == LiveState.Rung).Do(LiveAction.JumpToKey).Type("zz").Do(ScreenCommand.KeepMark);
        Assert.Contains("Not understood: zz. Such as E, or Ab", room.Screen, StringComparison.Ordinal);
        room.Do(LiveAction.ChooseParts).Type("x").Do(ScreenCommand.EraseLetter).Do(ScreenCommand.EraseLetter);
        Assert.DoesNotContain("who sings x", room.Screen, StringComparison.Ordinal);
        Assert.Equal(LiveState.Rung, room.Session.State);
    }

    [Fact]
    public void Only_the_altos_then_everyone_with_the_sopranos_above()
    {
        using Rehearsal room = new();
        room.LeadStep(7).Until(session => session.State == LiveState.Rung).Do(LiveAction.ChooseParts).Type("a").Do(ScreenCommand.KeepMark);
        Assert.Equal(["alto"], Assert.Single(room.Logged.Select(record => record.Event).OfType<PartsChosen>()).Parts);
        room.Until(session => session.RungIndex == 1 && session.State == LiveState.Rung);
        Assert.Equal(["alto"], room.Logged.Select(record => record.Event).OfType<RungStarted>().Last().Sing);
        room.Do(LiveAction.ChooseParts).Type("all").Do(ScreenCommand.KeepMark);
        Assert.Empty(room.Session.Voicing.Only);
        AssertFolds(room);
    }

    [Fact]
    public void A_chord_is_built_held_and_released_and_going_on_leads_in_again()
    {
        using Rehearsal room = new(width: 80, height: 24);
        room.LeadStep(7).Until(session => session.State == LiveState.Rung).Do(LiveAction.BuildChord).Pass(TimeSpan.FromSeconds(1));
        Assert.Single(room.Sounding);
        room.Do(LiveAction.BuildChord).Do(LiveAction.BuildChord).Pass(TimeSpan.FromMinutes(1));
        Assert.Equal(room.Session.Sounded!.Notes.Order(), room.Sounding.Order());
        Assert.Equal(3, room.Sounding.Count);
        Assert.Contains("HELD", room.Screen, StringComparison.Ordinal);
        room.Do(LiveAction.HoldChord).Pass(TimeSpan.FromMilliseconds(50));
        Assert.Empty(room.Sounding);
        Assert.Contains("SILENCE", room.Screen, StringComparison.Ordinal);
        room.Do(LiveAction.HoldChord).Pass(TimeSpan.FromSeconds(1)).Do(LiveAction.Silence).Pass(TimeSpan.FromMilliseconds(50));
        Assert.Empty(room.Sounding);
        room.Do(LiveAction.GoOn);
        Assert.Equal((LiveState.Cue, Hold.None), (room.Session.State, room.Session.Hold));
        AssertFolds(room);
    }

    [Fact]
    public void A_key_sung_alone_is_proved_by_its_first_note()
    {
        using Rehearsal room = new(width: 80, height: 24);
        room.LeadStep(7).Until(session => session.State == LiveState.Rung).Do(LiveAction.ProofNote).Pass(TimeSpan.FromMilliseconds(100));
        Assert.Empty(room.Sounding);
        Assert.Contains("alone to the end of this key", room.Screen, StringComparison.Ordinal);
        room.Until(session => session.State == LiveState.Wait).Pass(TimeSpan.FromMilliseconds(100));
        Assert.NotEmpty(room.Sounding);
        room.Pass(TimeSpan.FromSeconds(10));
        Assert.Empty(room.Sounding);
        room.Do(LiveAction.GoOn).Until(session => session.State == LiveState.Rung);
        AssertFolds(room);
    }

    [Fact]
    public void A_longer_breath_is_told_logged_and_heard()
    {
        using Rehearsal room = new();
        room.LeadStep(7).Until(session => session.State == LiveState.Rung).Do(LiveAction.LongerBreath).Do(LiveAction.LongerBreath);
        Assert.Contains("breath, in beats: 4", room.Screen, StringComparison.Ordinal);
        room.Until(session => session.State == LiveState.Breath);
        Assert.Equal(Beats.FromBeats(4), room.Session.StateEnd!.Value - room.Session.StateStart);
        AssertFolds(room);
    }

    [Theory]
    [InlineData("1", AccompanimentStyle.CueOnly, "cue chords only")]
    [InlineData("2", AccompanimentStyle.Melody, "the melody")]
    [InlineData("3", AccompanimentStyle.Block, "whole chords")]
    [InlineData("4", AccompanimentStyle.Broken, "broken chords")]
    [InlineData("5", AccompanimentStyle.BassAndChord, "bass and chord")]
    [InlineData("6", AccompanimentStyle.Drone, "a drone")]
    public void A_digit_says_what_the_piano_plays_from_the_next_key_on(string digit, AccompanimentStyle style, string words)
    {
        using Rehearsal room = new(width: 80, height: 24);
        room.LeadStep(7).Until(session => session.State == LiveState.Rung).Do(LiveAction.Accompany).Type(style == AccompanimentStyle.Drone ? "1" : "6");
        room.Do(LiveAction.Accompany);
        Assert.Contains("piano ▏  1 cue only, 2 melody, 3 chords, 4 broken, 5 bass and chord, 6 drone", room.Screen, StringComparison.Ordinal);
        room.Type(digit);
        Assert.Contains($"piano, from the next key: {words}", room.Screen, StringComparison.Ordinal);
        Assert.Contains($"piano: {words}", room.Screen, StringComparison.Ordinal);
        Assert.Equal(PianoData.Id(style), room.Logged.Select(record => record.Event).OfType<AccompanimentChanged>().Last().Style);
        room.Until(session => session.State == LiveState.Breath).Until(session => session.State == LiveState.Rung).Pass(TimeSpan.FromMilliseconds(100));
        Assert.Equal(style == AccompanimentStyle.CueOnly, room.Sounding.Count == 0);
        AssertFolds(room);
        Assert.Equal(style, AssertResumes(room).Piano.Style);
    }

    [Fact]
    public void When_it_is_late_the_least_harmful_cut_is_offered_in_one_line_and_one_key_takes_it()
    {
        using Rehearsal room = new(width: 80, height: 24);
        room.Do(LiveAction.GoOn).Pass(TimeSpan.FromSeconds(80));
        Assert.Contains("Ctrl+T: no way back in ", room.Screen, StringComparison.Ordinal);
        TimeSpan before = LiveCuts.Delay(room.Session, room.Clock.Now);
        room.Do(LiveAction.TakeCut);
        Assert.Contains("cut: no way back in ", room.Screen, StringComparison.Ordinal);
        CutTaken cut = Assert.Single(room.Logged.Select(record => record.Event).OfType<CutTaken>());
        Assert.InRange(before - LiveCuts.Delay(room.Session, room.Clock.Now), TimeSpan.FromSeconds(cut.Seconds - 1), TimeSpan.FromSeconds(cut.Seconds + 1));
        AssertFolds(room);
        AssertResumes(room);
        AssertReviewTells(room, cut);
    }

    /// <summary>In words, which the page holds too, and in JSON.</summary>
    private static void AssertReviewTells(Rehearsal room, CutTaken cut)
    {
        LastSession last = LastSession.Load(room.LogPath!).Value!;
        Assert.Contains("\nCut, as it ran late\n", ReviewText.Write(last.Review, last.Content.Choir), StringComparison.Ordinal);
        JsonElement told = Assert.Single(JsonDocument.Parse(ReviewReport.ToJson(last)).RootElement.GetProperty("cuts").EnumerateArray());
        Assert.Equal(
            (cut.Step + 1, false, cut.Seconds),
            (told.GetProperty("step").GetInt32(), told.GetProperty("left_out").GetBoolean(), told.GetProperty("saved_seconds").GetInt32()));
    }

    [Fact]
    public void An_exercise_is_found_by_letters_put_in_and_kept_in_the_log_while_the_piano_plays_on()
    {
        using Rehearsal room = new(width: 80, height: 24);
        room.LeadStep(7).Until(session => session.State == LiveState.Rung);
        int sent = room.Sent.Count;
        room.Do(LiveAction.InsertNext).Type("octave");
        string first = ExerciseFinder.Find("octave", room.Content.Folder.Exercises, 1)[0].Title;
        Assert.Contains($"put in next octave▏  1 {first[..12]}", room.Screen, StringComparison.Ordinal);
        room.Pass(TimeSpan.FromSeconds(2));
        Assert.True(room.Sent.Count > sent, "The piano fell silent while the exercise was looked for.");
        room.Do(ScreenCommand.KeepMark);
        StepAdded added = Assert.Single(room.Logged.Select(record => record.Event).OfType<StepAdded>());
        Assert.Contains(first, added.ExerciseYaml, StringComparison.Ordinal);
        Assert.Equal(6, room.Session.StepIndex);
        room.Do(LiveAction.StepOn);
        Assert.Equal(first, room.Session.Step!.Exercise.Title);
        Assert.Contains("8/13 ", room.Screen, StringComparison.Ordinal);
        AssertFolds(room);
        AssertResumes(room);
    }

    [Fact]
    public void A_digit_takes_another_exercise_that_was_found_and_now_means_now()
    {
        using Rehearsal room = new(width: 80, height: 24);
        room.LeadStep(7).Until(session => session.State == LiveState.Rung).Do(LiveAction.InsertNow).Type("legato2");
        Assert.Equal(ExerciseFinder.Find("legato", room.Content.Folder.Exercises, 5)[1].Id, room.Session.Step!.Exercise.Id);
        Assert.Equal(LiveState.Introduce, room.Session.State);
        AssertResumes(room);
    }

    [Fact]
    public void Without_a_plan_exercises_are_put_in_led_and_logged_all_the_same()
    {
        using Rehearsal room = new(isOpen: true, width: 80, height: 24);
        Assert.Contains("Ctrl+N puts in an exercise", room.Screen, StringComparison.Ordinal);
        room.Do(LiveAction.GoOn).Do(LiveAction.InsertNext).Type("hum").Do(ScreenCommand.KeepMark).Do(LiveAction.GoOn);
        Assert.Equal(LiveState.Cue, room.Session.State);
        room.LeadToRung(1).Type("a f").Do(ScreenCommand.KeepMark);
        Assert.True(AssertResumes(room).Clocks.StepSpent > TimeSpan.FromSeconds(1)); // the step's clock goes on, too
        room.RestOfStep();
        Assert.Equal((LiveState.Introduce, null), (room.Session.State, room.Session.Step));
        Assert.Equal("alto", Assert.Single(room.Logged.Select(record => record.Event).OfType<MarkMade>()).Parts[0]);
        AssertFolds(room);
        room.Do(ScreenCommand.Leave);
        Assert.Equal("ended", Assert.Single(room.Logged.Select(record => record.Event).OfType<RunEnded>()).Why); // left where nothing is to come: over, not cut off
    }

    /// <summary>As a start of the console would, from nothing but the log.</summary>
    /// <returns>The session as it would come back.</returns>
    private static LiveSession AssertResumes(Rehearsal room)
    {
        SessionLog log = SessionLogFile.Read(room.LogPath!).Value!;
        CutOffRun cutOff = CutOffRun.Rebuild(room.LogPath!, log, log.Start!)!;
        LiveSession resumed = LiveMachine.Resume(cutOff.Warmup, cutOff.Facts, room.Clock.Now, cutOff.Spent).Session;
        Assert.Equal(room.Session.Order, resumed.Order);
        Assert.Equal((room.Session.StepIndex, room.Session.Step!.Exercise.Id), (resumed.StepIndex, resumed.Step!.Exercise.Id));
        Assert.InRange(resumed.Clocks.StepSpent, TimeSpan.Zero, room.Session.Clocks.StepAt(room.Clock.Now));
        return resumed;
    }

    private static void AssertFolds(Rehearsal room) =>
        Assert.Equivalent(SessionFacts.Fold(room.Logged.Select(record => record.Event)), room.Session.Facts());
}
