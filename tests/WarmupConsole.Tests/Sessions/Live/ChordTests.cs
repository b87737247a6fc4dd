using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tests.Sessions.Live;

/// <summary>What the piano gives by hand, and the breath between the keys.</summary>
public class ChordTests
{
    [Fact]
    public void While_music_runs_the_cue_again_leads_in_anew_and_in_the_breath_to_the_next_key()
    {
        Assert.Equal((LiveState.Cue, 1), Place(LiveSituations.SecondRung().Act(LiveAction.CueAgain)));
        Assert.Equal((LiveState.Cue, 2), Place(LiveSituations.Of(LiveState.Breath).Act(LiveAction.CueAgain)));
    }

    [Theory]
    [InlineData(LiveState.Introduce, Hold.None, 60)]
    [InlineData(LiveState.Wait, Hold.None, 62)]
    [InlineData(LiveState.Rung, Hold.Silenced, 61)]
    public void Where_nothing_runs_the_chord_sounds_alone_and_nothing_follows(LiveState state, Hold hold, int root)
    {
        LiveDriver driver = LiveSituations.Of(state, hold).Act(LiveAction.CueAgain);

        Assert.Equal((state, hold), (driver.Session.State, driver.Session.Hold));
        Assert.Equal(root % 12, driver.Newest.OfType<LiveEffect.Play>().Single().Notes.Min(note => note.Midi) % 12);
        Assert.Null(driver.Session.NextWake);
        Assert.Empty(driver.NewestEvents);
    }

    [Fact]
    public void Going_on_ends_what_was_given_by_hand()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Wait).Act(LiveAction.CueAgain, LiveAction.GoOn);

        Assert.IsType<LiveEffect.Silence>(driver.Newest[0]);
        Assert.Null(driver.Session.Sounded);
        Assert.Equal(LiveState.Breath, driver.Session.State);
    }

    [Fact]
    public void A_held_chord_stops_the_music_has_a_tone_for_each_part_and_ends_when_released()
    {
        LiveDriver driver = LiveSituations.SecondRung().Act(LiveAction.HoldChord);
        IReadOnlyList<int> notes = driver.Session.Sounded!.Notes;

        Assert.Equal(Hold.Silenced, driver.Session.Hold);
        Assert.Equal(4, notes.Count);
        Assert.Equal([1, 5, 8], notes.Select(note => note % 12).Distinct().Order());
        Assert.Equal(1, notes[0] % 12);
        Assert.All(notes.Zip(LiveFixtures.Choir.Parts.Reverse()), pair => Assert.True(pair.Second.Range.Comfortable.Contains(pair.First), $"{pair.Second.Name} {pair.First}"));

        driver.Act(LiveAction.HoldChord);
        Assert.Null(driver.Session.Sounded);
        Assert.Equal([typeof(LiveEffect.Silence)], driver.Newest.Select(effect => effect.GetType()));
        Assert.Equal((LiveState.Rung, Hold.Silenced), (driver.Session.State, driver.Session.Hold));
    }

    [Fact]
    public void A_chord_is_built_from_the_lowest_part_and_no_tone_is_struck_again()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Wait).Act(LiveAction.BuildChord);
        int root = Assert.Single(driver.Session.Sounded!.Notes);
        Assert.Equal("held: up to Bass", driver.Session.Notice!.Text);

        driver.Now += TimeSpan.FromSeconds(5);
        driver.Act(LiveAction.BuildChord);
        ScoreNote added = Assert.Single(Assert.IsType<LiveEffect.Play>(Assert.Single(driver.Newest)).Notes);
        Assert.Equal(driver.Now, driver.Session.Sounded!.Timeline.TimeAt(added.Start));
        Assert.NotEqual(root, added.Midi);

        driver.Act(LiveAction.BuildChord, LiveAction.BuildChord, LiveAction.BuildChord);
        Assert.Equal(4, driver.Session.Sounded!.Notes.Count);
        Assert.Equal("Every part has its tone; the key for the held chord releases it.", driver.Session.Notice!.Text);
        Assert.Equal(AtOnce(), driver.Session.Sounded.Notes);
    }

    [Fact]
    public void A_held_chord_sounds_through_marks_changes_of_tempo_and_of_the_ladder()
    {
        LiveDriver driver = LiveSituations.SecondRung().Act(LiveAction.HoldChord, LiveAction.Faster, LiveAction.LongerBreath, LiveAction.TurnRound)
            .Send(new LiveInput.PinMoment()).Send(new LiveInput.SwapOctave("soprano"));

        Assert.NotNull(driver.Session.Sounded);
        Assert.Null(driver.Act(LiveAction.Silence).Session.Sounded);
    }

    [Fact]
    public void A_key_is_sung_alone_to_its_end_then_its_first_note_sounds_and_it_waits()
    {
        LiveDriver driver = LiveSituations.SecondRung().Act(LiveAction.ProofNote);
        Beats end = driver.Session.StateEnd!.Value;
        Assert.IsType<LiveEffect.Silence>(driver.Newest[0]);
        Assert.DoesNotContain(driver.Newest, effect => effect is LiveEffect.Play);
        Assert.Equal(Hold.None, driver.Session.Hold);

        driver.RunTo(LiveState.Wait);
        LiveEffect.Play proof = driver.Newest.OfType<LiveEffect.Play>().Single();
        Assert.Equal([49, 61], proof.Notes.Select(note => note.Midi).Order());
        Assert.All(proof.Notes, note => Assert.Equal(end, note.Start));
        Assert.Contains(new RungEnded(1, 1, Whole: true), driver.NewestEvents);
        Assert.True(driver.Session.Rolling);

        driver.Act(LiveAction.GoOn).RunTo(LiveState.Rung).RunTo(LiveState.Breath);
    }

    [Fact]
    public void Asked_in_the_lead_in_the_piano_leaves_the_whole_key_alone()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Cue).Act(LiveAction.ProofNote);
        int before = driver.Effects.Count;
        driver.RunTo(LiveState.Rung);
        Assert.DoesNotContain(driver.Effects.Skip(before), effect => effect is LiveEffect.Play);

        driver.Act(LiveAction.Repeat).RunTo(LiveState.CountIn);
        Assert.Contains(driver.Newest, effect => effect is LiveEffect.Play);
    }

    [Fact]
    public void The_proof_of_the_last_key_sounds_into_the_next_talk()
    {
        LiveDriver driver = LiveSituations.SecondRung();
        while (driver.Session.NextRung is not null)
        {
            driver.RunTo(LiveState.Breath).RunTo(LiveState.Rung);
        }

        driver.Act(LiveAction.ProofNote).RunTo(LiveState.Introduce);
        Assert.Equal([48, 60], driver.Session.Sounded!.Notes.Order());
        Assert.IsType<LiveEffect.Silence>(driver.Act(LiveAction.GoOn).Newest[0]);
    }

    [Theory]
    [InlineData(LiveState.Introduce, 60)]
    [InlineData(LiveState.Wait, 61)]
    public void Where_nothing_runs_the_first_note_sounds_now(LiveState state, int highest) =>
        Assert.Equal(highest, LiveSituations.Of(state).Act(LiveAction.ProofNote).Newest.OfType<LiveEffect.Play>().Single().Notes.Max(note => note.Midi));

    [Fact]
    public void The_breath_is_longer_from_the_next_one_on_and_has_its_limits()
    {
        LiveDriver driver = LiveSituations.SecondRung().Act(LiveAction.LongerBreath);
        Assert.Equal(new BreathChanged(1, 3), driver.NewestEvents.Single());
        driver.RunTo(LiveState.Breath);
        Assert.Equal(Beats.FromBeats(3), driver.Session.StateEnd!.Value - driver.Session.StateStart);

        driver.Act([.. Enumerable.Repeat(LiveAction.LongerBreath, 6)]);
        Assert.Equal((8, "A breath between two keys lasts 1 to 8 beats; this is the end of it, or the step has no keys."), (driver.Session.BreathBeats, driver.Session.Notice!.Text));
        Assert.Equal(2, driver.Act(LiveAction.StepOn).Session.Step!.Plan.BreathBeats);
    }

    [Fact]
    public void A_breath_whose_chords_were_handed_over_keeps_its_length()
    {
        LiveDriver driver = LiveSituations.SecondRung();
        driver.Now = driver.Session.NextWake!.Value;
        driver.Send(new LiveInput.TimePassed());
        Assert.True(driver.Session.NextKeyCued);

        driver.Act(LiveAction.ShorterBreath).RunTo(LiveState.Breath);
        Assert.Equal(Beats.FromBeats(2), driver.Session.StateEnd!.Value - driver.Session.StateStart);
        driver.RunTo(LiveState.Rung).RunTo(LiveState.Breath);
        Assert.Equal(Beats.FromBeats(1), driver.Session.StateEnd!.Value - driver.Session.StateStart);
    }

    private static (LiveState State, int Rung) Place(LiveDriver driver) => (driver.Session.State, driver.Session.RungIndex);

    private static IReadOnlyList<int> AtOnce() => LiveSituations.Of(LiveState.Wait).Act(LiveAction.HoldChord).Session.Sounded!.Notes;
}
