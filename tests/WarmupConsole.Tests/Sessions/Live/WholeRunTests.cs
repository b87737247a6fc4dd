using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tests.Sessions.Live;

/// <summary>A whole warm-up in virtual time: a breathing step, five keys up and back, three keys up at another tempo.</summary>
public class WholeRunTests
{
    private static readonly Moment Begin = new(1_000_000_000);

    private readonly LiveDriver _driver = new(LiveFixtures.Whole, Begin);

    [Fact]
    public void It_goes_through_all_steps_and_keys_and_ends()
    {
        Run();

        Assert.Equal(
            [
                "step 0 counted-breath", "round 0", "round 1",
                "step 1 five-note-scale 60 61 62 61 60", "lead-in 0",
                "C4", "whole 0", "Db4", "whole 1", "D4", "whole 2", "Db4", "whole 3", "C4", "whole 4",
                "step 2 five-note-scale 60 61 62", "lead-in 0",
                "C4", "whole 0", "Db4", "whole 1", "D4", "whole 2",
                "finished",
            ],
            _driver.Events.Select(Words).Where(words => words.Length > 0));
        Assert.Equal(LiveState.Finished, _driver.Session.State);
    }

    [Fact]
    public void Each_step_takes_the_beats_it_should_to_the_nanosecond()
    {
        Assert.Equal([24.0, 57.0, 21.875], Run());
    }

    [Fact]
    public void Every_rung_and_cue_is_handed_over_at_least_a_beat_before_it_sounds_but_for_the_lead_in()
    {
        List<Beats> leads = [];
        Run(driver => leads.AddRange(driver.Newest.OfType<LiveEffect.Play>()
            .Select(play => play.Notes.Min(note => note.Start) - driver.Session.Timeline.BeatAt(driver.Now))));

        // A chord and a rung at each lead-in, a cue and a rung at each of the six changes of key.
        Assert.Equal(2 * (2 + 6), leads.Count);
        Assert.Equal(2, leads.Count(lead => lead == Beats.Zero));
        Assert.All(leads.Where(lead => lead != Beats.Zero), lead => Assert.True(lead >= Beats.FromBeats(1), $"{lead} beats ahead"));
    }

    [Fact]
    public void The_piano_gives_the_tonic_then_the_exercise_then_the_cue_to_the_next_key()
    {
        Run();

        Rung[] rungs = [.. LiveFixtures.Whole.Steps[1].Ladder.Rungs];
        Beats two = Beats.FromBeats(2);
        IEnumerable<ScoreNote> wanted =
        [
            .. At(CueChords.Tonic(rungs[0], LiveFixtures.Scale, two), -4),
            .. At(Accompaniment.For(LiveFixtures.Scale, rungs[0]), 0),
            .. At(CueChords.ToNextKey(rungs[0], rungs[1], LiveFixtures.Scale, two), 9),
            .. At(Accompaniment.For(LiveFixtures.Scale, rungs[1]), 11),
        ];
        Assert.Equal(wanted, _driver.Effects.OfType<LiveEffect.Play>().Take(4).SelectMany(play => play.Notes));
    }

    [Fact]
    public void A_started_rung_names_who_sings_and_their_sounding_notes()
    {
        Run();

        RungStarted first = _driver.Events.OfType<RungStarted>().First();
        Assert.Equal((1, 0, "C4", 60, 60_000), (first.Step, first.Rung, first.Tonic, first.Midi, first.MilliBpm));
        Assert.Equal(["soprano", "alto", "tenor", "bass"], first.Sing);
        Assert.Equal([60, 60, 48, 48], first.Low);
        Assert.Equal([67, 67, 55, 55], first.High);
    }

    [Fact]
    public void A_step_in_which_no_key_fits_is_passed_over_with_the_reason()
    {
        LiveDriver driver = new LiveDriver(LiveFixtures.Of(LiveFixtures.Step(LiveFixtures.TooWide), LiveFixtures.Step(LiveFixtures.Scale)))
            .Act(LiveAction.GoOn, LiveAction.GoOn);

        Assert.Equal((LiveState.Introduce, 1), (driver.Session.State, driver.Session.StepIndex));
        Assert.StartsWith("Passed over: Too wide. ", driver.Session.Notice!.Text, StringComparison.Ordinal);
        Assert.Contains(LiveFixtures.Whole.Steps[1].Exercise.Id, driver.NewestEvents.OfType<StepStarted>().Single().Exercise, StringComparison.Ordinal);
    }

    [Fact]
    public void In_waiting_mode_every_key_waits_for_the_director_and_is_cued_when_called()
    {
        LiveDriver driver = new LiveDriver(LiveFixtures.Waiting(LiveFixtures.Whole)).Act(LiveAction.GoOn, LiveAction.StepOn, LiveAction.GoOn)
            .RunTo(LiveState.Wait);
        Assert.Null(driver.Session.NextWake);

        driver.Pass(30).Act(LiveAction.GoOn);

        Assert.Equal(LiveState.Breath, driver.Session.State);
        Assert.Equal(2, driver.Newest.OfType<LiveEffect.Play>().Count());
        Assert.Equal(driver.Now + TimeSpan.FromSeconds(2), driver.Session.NextWake);
        driver.RunTo(LiveState.Wait);
        Assert.Equal(1, driver.Session.RungIndex);
    }

    private List<double> Run(Action<LiveDriver>? watch = null)
    {
        List<double> seconds = [];
        _driver.Act(LiveAction.GoOn);
        while (_driver.Session.State != LiveState.Finished)
        {
            Moment from = _driver.Now;
            _driver.Act(LiveAction.GoOn);
            watch?.Invoke(_driver);
            while (_driver.Session.NextWake is { } wake)
            {
                _driver.Now = wake;
                _driver.Send(new LiveInput.TimePassed());
                watch?.Invoke(_driver);
            }

            seconds.Add((_driver.Now - from).TotalSeconds);
        }

        return seconds;
    }

    private static IEnumerable<ScoreNote> At(IReadOnlyList<ScoreNote> notes, int beat) =>
        notes.Select(note => note with { Start = note.Start + Beats.FromBeats(beat) });

    private static string Words(SessionEvent happened) => happened switch
    {
        StepStarted step => $"step {step.Step} {step.Exercise} {string.Join(' ', step.Keys)}".TrimEnd(),
        RoundStarted round => $"round {round.Round}",
        LeadInStarted leadIn => $"lead-in {leadIn.Rung}",
        RungStarted rung => rung.Tonic,
        RungEnded rung => (rung.Whole ? "whole " : "broken off ") + rung.Rung,
        RunEnded ended => ended.Why,
        _ => "",
    };
}
