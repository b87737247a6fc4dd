using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Tests.Sessions.Live;

/// <summary>What holds whatever a director does. A failure names its seed: WARMUP_SEED=n runs that one alone.</summary>
public class LiveLawTests
{
    private const int Seeds = 400;
    private const int Inputs = 50;

    [Fact]
    public void Notes_carry_the_present_generation_ascend_and_are_all_gone_in_a_hold() => Under(director =>
    {
        SoundModel sound = new();
        Lead(director, driver =>
        {
            sound.Take(driver.Newest);
            Assert.Equal(sound.Generation, driver.Session.Generation);
            Assert.True(driver.Session.Hold == Hold.None || driver.Session.Sounded is not null || sound.Pending == 0, $"{sound.Pending} notes are due in a hold.");
        });
    });

    [Fact]
    public void The_log_folds_to_what_the_session_shows() => Under(director =>
    {
        SessionFacts folded = SessionFacts.None;
        Lead(director, driver =>
        {
            folded = driver.NewestEvents.Aggregate(folded, (facts, happened) => facts.After(happened));
            Assert.Equal(Words(driver.Session.Facts()), Words(folded));
        });
    });

    [Fact]
    public void Clocks_never_run_backwards_and_stand_still_only_when_they_should() => Under(director =>
    {
        TimeSpan before = TimeSpan.Zero;
        Lead(director, driver =>
        {
            LiveTimers timers = LiveTimers.At(driver.Session, driver.Now);
            Assert.True(timers.WholeSpent >= before, $"{timers.WholeSpent} after {before}");
            Assert.True(timers.StepSpent <= timers.WholeSpent);
            Assert.True(timers.StepProjected >= timers.StepSpent && timers.WholeProjected >= timers.WholeSpent);
            Assert.Equal(driver.Session is { State: not (LiveState.Ready or LiveState.Finished), Hold: not Hold.Paused }, driver.Session.Clocks.IsRunning);
            before = timers.WholeSpent;
        });
    });

    [Fact]
    public void However_late_time_is_told_the_same_happens_at_the_same_beats() => Under(director =>
    {
        LiveDriver prompt = new(director.Warmup);
        int seen = 0;
        Lead(director, late =>
        {
            while (prompt.Session.NextWake is { } wake && wake <= late.Now)
            {
                prompt.Now = wake;
                prompt.Send(new LiveInput.TimePassed());
            }

            prompt.Now = late.Now;
            prompt.Send(late.NewestInput!);
            Assert.Equal(late.Newest.Select(EffectWords), prompt.Effects.Skip(seen).Select(EffectWords));
            seen = prompt.Effects.Count;
            Assert.Equal(late.Session.Clocks, prompt.Session.Clocks);
            Assert.Equal((late.Session.State, late.Session.StateStart, late.Session.StateEnd), (prompt.Session.State, prompt.Session.StateStart, prompt.Session.StateEnd));
        });
    });

    [Fact]
    public void A_change_of_tempo_does_not_move_the_present_beat_but_for_the_rest_of_its_tick() => Under(director =>
    {
        Timeline? running = null;
        Lead(director, driver =>
        {
            LiveEffect.SetTimeline[] set = [.. driver.Newest.OfType<LiveEffect.SetTimeline>()];
            if (running is { } old && set is [var changed] && driver.NewestInput is LiveInput.Act { Action: LiveAction.Faster or LiveAction.Slower or LiveAction.TapTempo }
                && driver.Newest is [.., LiveEffect.SetTimeline, LiveEffect.Record] && !driver.NewestEvents.OfType<LeadInStarted>().Any())
            {
                long ticks = (changed.Timeline.BeatAt(driver.Now) - old.BeatAt(driver.Now)).Ticks;
                Assert.True(ticks is 0 or 1, $"The beat moved by {ticks} ticks.");
            }

            running = driver.Session.NextWake is null ? null : driver.Session.Timeline;
        });
    });

    [Fact]
    public void A_run_cut_off_anywhere_goes_on_at_the_same_rung_of_the_same_ladder() => Under(director => Lead(director, driver =>
    {
        if (driver.Inputs % 7 != 0)
        {
            return;
        }

        SessionFacts facts = SessionFacts.Fold(driver.Events);
        LiveOutcome resumed = LiveMachine.Resume(director.Warmup, facts, driver.Now);
        IEnumerable<SessionEvent> log = [.. driver.Events, .. resumed.Effects.OfType<LiveEffect.Record>().Select(record => record.Event)];
        Assert.Equal(Words(resumed.Session.Facts()), Words(SessionFacts.Fold(log)));
        int rung = facts.Progress == RungProgress.Over ? facts.RungIndex + 1 : facts.RungIndex;
        Assert.Equal(
            Words(facts.Progress == RungProgress.NotBegun
                ? facts with { Hold = Hold.None }
                : facts with { Hold = Hold.Paused, RungIndex = rung, Progress = RungProgress.Begun }),
            Words(resumed.Session.Facts()));

        LiveOutcome wentOn = LiveMachine.Handle(resumed.Session, new LiveInput.Act(LiveAction.GoOn), driver.Now);
        if (resumed.Session is { State: LiveState.Introduce or LiveState.Cue, Rungs.Count: > 0, Follows: false })
        {
            Assert.Contains(new LiveEffect.Record(new LeadInStarted(facts.StepIndex, rung)), wentOn.Effects);
        }
    }));

    private static void Lead(RandomDirector director, Action<LiveDriver> check)
    {
        LiveDriver driver = new(director.Warmup);
        for (int i = 0; i < Inputs; i++)
        {
            driver.Now += director.NextGap();
            driver.Send(director.NextInput(driver.Session, driver.Now));
            check(driver);
        }
    }

    private static void Under(Action<RandomDirector> law)
    {
        bool one = int.TryParse(Environment.GetEnvironmentVariable("WARMUP_SEED"), out int only);
        foreach (int seed in one ? [only] : Enumerable.Range(0, Seeds))
        {
            try
            {
                law(new(seed));
            }
            catch (Exception e)
            {
                throw new InvalidOperationException($"reproduce with WARMUP_SEED={seed}: {e.Message}", e);
            }
        }
    }

    private static string Words(SessionFacts facts) =>
        $"{facts with { Keys = [], Marks = [], Order = [] }} order {string.Join(' ', facts.Order)} keys {string.Join(' ', facts.Keys)} marks {string.Join(' ', facts.Marks)}";

    private static string EffectWords(LiveEffect effect) => effect is LiveEffect.Play play
        ? $"{play.Generation}: {string.Join(' ', play.Notes)}"
        : $"{effect}";
}
