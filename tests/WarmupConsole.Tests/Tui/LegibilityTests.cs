using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Scales;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Tui.Keys;
using WarmupConsole.Tui.Presentation;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tests.Tui;

/// <summary>What must be found at a glance: the call to act, the time, the count of keys, at every size.</summary>
public class LegibilityTests
{
    [Theory]
    [InlineData(60, 16)]
    [InlineData(80, 24)]
    [InlineData(120, 36)]
    public void While_a_step_is_explained_the_talk_is_counted_and_the_way_on_is_named(int width, int height)
    {
        string spent = ScreenTexts.Clock(TimeSpan.FromSeconds(42));
        string planned = ScreenTexts.Clock(TimeSpan.FromSeconds(LiveFixture.Introduce.Step!.TalkSeconds));
        Assert.Contains($"talk {spent} of {planned}   Space: cue and begin", Drawn(LiveFixture.Introduce, width, height));
        Assert.Contains("Space: begin", Drawn(LiveFixture.IntroduceBreath, width, height));
    }

    [Fact]
    public void A_step_without_a_key_says_why_and_how_to_go_on()
    {
        string screen = Drawn(LiveFixture.NoKey, 80, 24);
        Assert.Contains("No key fits the sopranos: the pattern spans", screen);
        Assert.Contains("Space: pass over this step", screen);
        Assert.DoesNotContain("Space: cue", screen);
        Assert.DoesNotContain("last key", screen);
        Assert.Contains("Space: pass over this step", Drawn(LiveFixture.NoKey, 40, 12));
    }

    [Fact]
    public void The_projection_is_a_length_and_not_a_time_of_day()
    {
        string screen = Drawn(LiveFixture.Rung, 80, 24);
        Assert.Matches(@"takes \d+:\d\d \(\+\d+:\d\d\)", screen);
        Assert.DoesNotContain("ends ", screen);
    }

    [Theory]
    [InlineData(1, "1 round")]
    [InlineData(2, "2 rounds")]
    public void Rounds_are_counted_in_good_words(int rounds, string words)
    {
        LiveSession session = WithRounds(LiveFixture.IntroduceBreath, rounds);
        string[] rows = [.. Drawn(session, 80, 24).Split('\n').Select(row => row.Length > 40 ? row[..40].Trim() : row.Trim())];
        Assert.Contains(words, rows);
    }

    [Fact]
    public void The_count_of_keys_stays_whole_beside_a_long_name()
    {
        LiveSession session = LiveFixture.BreathBetween;
        session = session with { Rungs = [.. session.Rungs.Select(rung => rung with { Mode = Mode.HarmonicMinor })] };
        Assert.Contains(", 3 of 9", Drawn(session, 80, 24));
    }

    [Fact]
    public void A_shortened_name_shows_that_it_is() =>
        Assert.Contains("Hohe S…", Drawn(LiveFixture.WithParts(LiveFixture.Rung, [.. Enumerable.Range(1, 4).Select(n => LiveFixture.Part($"Hohe Stimmen {n}", 0, "C4", "A5", "D4", "F5"))]), 130, 36));

    [Fact]
    public void In_a_small_window_key_state_rest_time_and_news_are_all_there()
    {
        LiveSession session = LiveFixture.High with { Notice = new("There is no key behind this one.", false, LiveFixture.Now) };
        string screen = Drawn(session, 40, 12);
        Assert.All(["sing", " left", "█", "A♭ major", "rests: Alto, Bass", "There is no key behind", "Tab: silence", "a larger window shows more"], text => Assert.Contains(text, screen));
        Assert.Contains("altos flat in D♭, key 2, saved", Drawn(LiveFixture.Rung, 40, 12));
    }

    [Theory]
    [InlineData(79, 23)]
    [InlineData(80, 24)]
    public void Every_key_is_on_the_page_of_the_keys(int width, int height)
    {
        string screen = ScreenPresenter.Draw(Model(LiveFixture.Rung) with { HelpOpen = true }, width, height).ToString();
        Assert.All(KeyTable.Rows, row => Assert.Matches($@"{System.Text.RegularExpressions.Regex.Escape(row.Label)} +{row.Brief}", screen));
    }

    [Theory]
    [InlineData(120, 36)]
    [InlineData(200, 60)]
    public void A_large_screen_shows_the_syllables_in_large_letters(int width, int height)
    {
        Assert.Contains("noo", Drawn(LiveFixture.Rung, 80, 24));
        Assert.DoesNotContain("noo", Drawn(LiveFixture.Rung, width, height));
    }

    [Fact]
    public void Syllables_without_large_letters_stay_plain_text()
    {
        Exercise exercise = LiveFixture.Scale with { Pattern = new([LiveFixture.Note(1, "nöö")]) };
        LiveSession session = LiveFixture.Rung with { Warmup = LiveFixture.Rung.Warmup with { Steps = [.. LiveFixture.Rung.Warmup.Steps.Select(step => step with { Exercise = exercise })] } };
        Assert.Contains("nöö", Drawn(session, 200, 60));
    }

    [Fact]
    public void A_very_large_screen_names_those_who_rest_in_large_letters_and_in_words()
    {
        string screen = Drawn(LiveFixture.High, 200, 60);
        Assert.Contains("Alto  rests", screen);
        Assert.Contains("Soprano  A♭4–E♭5", screen);
    }

    [Fact]
    public void The_last_page_has_the_newest_mark_first_no_old_word_and_what_is_next()
    {
        LiveSession finished = LiveFixture.Finished with { Notice = new("turned round", false, LiveFixture.Now - TimeSpan.FromSeconds(1)) };
        string screen = Drawn(finished, 80, 24);
        Assert.True(screen.IndexOf("doors closed late", StringComparison.Ordinal) < screen.IndexOf("altos flat", StringComparison.Ordinal));
        Assert.DoesNotContain("turned round", screen);
        Assert.Contains("warmup review, then warmup plan next", screen);
    }

    private static LiveSession WithRounds(LiveSession session, int rounds) =>
        session with { Warmup = session.Warmup with { Steps = [.. session.Warmup.Steps.Select(step => step with { Rounds = rounds })] } };

    private static ScreenModel Model(LiveSession session) => new(session, new("Sound: none", "log", false), MarkLine.Closed, LiveFixture.Now);

    private static string Drawn(LiveSession session, int width, int height) => ScreenPresenter.Draw(Model(session), width, height).ToString();
}
