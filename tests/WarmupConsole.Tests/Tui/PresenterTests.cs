using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Tui.Presentation;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tests.Tui;

public class PresenterTests
{
    [Fact]
    public void Control_characters_in_names_never_reach_the_screen()
    {
        const string evil = "A\u001b[2J\u0007\u202Ebc\u009b31m\n";
        LiveSession session = LiveFixture.WithParts(LiveFixture.Rung, [LiveFixture.Part(evil, 0, "C4", "A5", "D4", "F5")]);
        session = session with { Warmup = session.Warmup with { Steps = [.. session.Warmup.Steps.Select(step => step with { Exercise = step.Exercise with { Title = evil } })] } };
        string screen = Drawn(session, 80, 24) + Drawn(session with { State = LiveState.Ready }, 80, 24);

        Assert.Contains("A\uFFFD[2J\uFFFDbc\uFFFD31m", screen);
        Assert.DoesNotContain(screen, c => c != '\n' && (char.IsControl(c) || c == '\u202E'));
    }

    [Fact]
    public void All_marks_of_the_newest_line_are_shown_as_they_were_understood()
    {
        LiveMark first = LiveFixture.Mark(2, "sopranos flat in E", "flat", ["soprano"], true);
        LiveMark second = LiveFixture.Mark(3, "altos sharp in E", "sharp", ["alto"], false);
        LiveSession session = LiveFixture.Rung with { Marks = [.. LiveFixture.Rung.Marks, first, second with { Content = second.Content with { Raw = first.Content.Raw } }] };

        Assert.Contains("2  sopranos flat in E; 3  altos sharp in E, key 2, saving…", Drawn(session, 80, 24));
        Assert.Contains("1  altos flat in D♭, key 2, saved", Drawn(session, 120, 36));
    }

    [Theory]
    [InlineData("小さい合唱")]
    [InlineData("e\u0301te\u0301")]
    public void Wide_and_composed_letters_keep_the_rows_in_line(string name)
    {
        LiveSession session = LiveFixture.WithParts(LiveFixture.Rung, [LiveFixture.Part(name, 0, "C4", "A5", "D4", "F5")]);
        Canvas canvas = ScreenPresenter.Draw(Model(session), 80, 24);
        for (int row = 0; row < canvas.Height; row++)
        {
            Assert.Equal(80, string.Concat(canvas.Row(row).ToArray().Select(cell => cell.Text)) is var text ? CellText.Columns(text) : 0);
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(8)]
    [InlineData(16)]
    public void One_to_sixteen_parts_are_all_named(int count)
    {
        Part[] parts = [.. Enumerable.Range(1, count).Select(n => LiveFixture.Part($"P{n}", 0, "C4", "A5", "D4", "F5"))];
        string screen = Drawn(LiveFixture.WithParts(LiveFixture.Rung, parts), 80, 24);
        Assert.All(parts, part => Assert.Contains(part.Name, screen));
    }

    [Fact]
    public void A_part_is_announced_one_key_before_it_rests()
    {
        string screen = Drawn(LiveFixture.High with { RungIndex = 7 }, 80, 24);
        Assert.Contains("Alto    rests next", screen);
        Assert.Contains("· Alto    rests", Drawn(LiveFixture.High, 80, 24));
    }

    [Fact]
    public void Between_two_keys_the_next_one_is_shown() => Assert.Contains("D major next, key 3 of 9", Drawn(LiveFixture.BreathBetween, 80, 24));

    [Theory]
    [InlineData(Hold.Paused, "PAUSED")]
    [InlineData(Hold.Silenced, "SILENCE")]
    public void A_hold_is_named_at_every_size(Hold hold, string word)
    {
        foreach ((int width, int height) in new[] { (20, 4), (60, 16), (80, 24), (200, 60) })
        {
            Assert.Contains(word, Drawn(LiveFixture.Rung with { Hold = hold }, width, height));
        }
    }

    [Fact]
    public void A_hold_says_what_going_on_leads_to()
    {
        Assert.Contains("Space leads in to D♭ again", Drawn(LiveFixture.Silenced, 80, 24));
        Assert.Contains("Space leads in to D", Drawn(LiveFixture.BreathBetween with { Hold = Hold.Silenced }, 80, 24));
        Assert.DoesNotContain(" again\n", Drawn(LiveFixture.BreathBetween with { Hold = Hold.Silenced }, 80, 24));
        Assert.Contains("Space goes on", Drawn(LiveFixture.Introduce with { Hold = Hold.Paused }, 80, 24));
    }

    [Fact]
    public void A_change_of_octave_is_told_one_key_ahead()
    {
        LiveSession lower = LiveFixture.Rung with
        {
            Rungs = [.. LiveFixture.Rung.Rungs.Select((rung, index) => index <= LiveFixture.Rung.RungIndex ? rung : rung with
            {
                Parts = [.. rung.Parts.Select(part => part.Part.Id == "bass" ? part with { OctaveShift = -1 } : part)],
            })],
        };
        Assert.Contains("Bass    lower next", Drawn(lower, 80, 24));
        Assert.DoesNotContain("lower next", Drawn(LiveFixture.Rung, 80, 24));
    }

    [Fact]
    public void Trouble_stays_while_other_words_fade()
    {
        LiveSession spoken = LiveFixture.Rung with { Notice = new("Back to waiting.", false, LiveFixture.Now - TimeSpan.FromSeconds(60)) };
        Assert.DoesNotContain("Back to waiting.", Drawn(spoken, 80, 24));
        Assert.Contains("Back to waiting.", Drawn(spoken with { Notice = spoken.Notice! with { IsTrouble = true } }, 80, 24));
    }

    [Fact]
    public void A_log_in_trouble_is_told()
    {
        ScreenModel model = Model(LiveFixture.Rung) with { Status = new("port", "The log cannot be written: the folder is read-only.", true) };
        Assert.Contains("The log cannot be written", ScreenPresenter.Draw(model, 80, 24).ToString());
    }

    [Fact]
    public void An_open_session_without_a_plan_is_led_too()
    {
        LiveSession open = new() { Warmup = LiveFixture.Ready.Warmup with { Steps = [] } };
        Assert.Contains(ScreenTexts.OpenSessionHint, Drawn(open, 80, 24));
        Assert.Contains(ScreenTexts.OpenSession, Drawn(open with { State = LiveState.Introduce }, 80, 24));
    }

    [Fact]
    public void All_large_words_have_their_letters()
    {
        IEnumerable<string> words = [ScreenTexts.Finished, .. ScreenTexts.Holds.Values, .. ScreenTexts.Phases.Values, .. ScreenTexts.LargeStages.Values, "ABCDEFG♭♯0123456789"];
        Assert.All(words.SelectMany(word => word), letter => Assert.NotNull(BlockFont.Find(letter)));
    }

    [Fact]
    public void Every_large_letter_has_five_rows_of_one_width() => Assert.All(BlockFont.Letters, letter =>
    {
        string[] rows = BlockFont.Find(letter)!;
        Assert.Equal(BlockFont.Rows, rows.Length);
        Assert.Single(rows.Select(row => row.Length).Distinct());
    });

    [Fact]
    public void A_long_pattern_goes_on_in_a_second_pair_of_lines()
    {
        Pattern pattern = new([.. Enumerable.Range(1, 21).Select(degree => LiveFixture.Note(((degree - 1) % 7) + 1, "strength"))]);
        IReadOnlyList<PatternLine> lines = PatternLine.Layout(pattern, 78, 2);
        Assert.Equal(3, lines.Count);
        Assert.All(lines, line => Assert.InRange(CellText.Columns(line.Syllables), 1, 78));
    }

    [Fact]
    public void Degrees_stand_above_their_syllables_with_real_signs()
    {
        Pattern pattern = new([LiveFixture.Note(1, "noo"), new(new Degree(3, -1, 0), new(960), null), new(null, new(960), null), LiveFixture.Note(5, "ah")]);
        Assert.Equal(new PatternLine("1    ♭3  ·  5", "noo  –      ah"), Assert.Single(PatternLine.Layout(pattern, 40, 2)));
    }

    [Fact]
    public void A_mark_with_a_pitch_stands_at_it_and_a_praise_elsewhere_does_not_hide_it()
    {
        LiveSession session = LiveFixture.Rung with
        {
            Marks = [LiveFixture.Mark(1, "x", "late", ["bass"], true) with { Content = new("x", ["bass"], "late", null, Pitch.Parse("E2"), "") }],
        };
        string[] rows = Drawn(session, 80, 24).Split('\n');
        int lowest = Array.FindIndex(rows, row => row.Contains("Sop Alt Ten Bas")) - 1;
        Assert.Contains("l", rows[lowest]);
    }

    /// <summary>Key and caption, the notes of a part, the axis of the board, the next key.</summary>
    [Theory]
    [InlineData("german", "Des major", "des1–as1", " c2 ", "D")]
    [InlineData("fixed-do", "Re♭ major", "Re♭4–La♭4", " Do5 ", "Re")]
    [InlineData("helmholtz", "D♭ major", "d♭'–a♭'", " c'' ", "D")]
    public void Notes_are_named_as_the_choir_names_them(string notes, string key, string span, string axis, string nextKey)
    {
        LiveSession session = LiveFixture.Rung;
        session = session with { Warmup = session.Warmup with { Choir = session.Warmup.Choir with { Notes = NoteNaming.All.Single(naming => naming.Id == notes) } } };
        string screen = Drawn(session, 80, 24);
        Assert.Contains(key, screen);
        Assert.Contains(span, screen);
        Assert.Contains(axis, screen);
        Assert.Contains($"{ScreenTexts.NextKey} {nextKey}", screen);
        Assert.DoesNotContain("C5", screen);
    }

    [Fact]
    public void The_large_letters_of_a_long_key_name_fit()
    {
        LiveSession session = LiveFixture.Rung;
        session = session with { Warmup = session.Warmup with { Choir = session.Warmup.Choir with { Notes = NoteNaming.German } } };
        Assert.All(((int, int)[])[(30, 8), (60, 16), (80, 24), (200, 60)], size => Assert.Contains("█", Drawn(session with { RungIndex = 6 }, size.Item1, size.Item2)));
    }

    [Fact]
    public void An_exercise_in_parts_says_who_has_a_line_of_their_own()
    {
        WarmupStep[] steps = [.. LiveFixture.Rung.Warmup.Steps];
        steps[4] = steps[4] with { Exercise = LiveFixture.Scale with { Voices = [new(["alto", "men"], LiveFixture.Scale.Pattern!, Beats.Zero)] } };

        Assert.DoesNotContain("in parts", Drawn(LiveFixture.Rung, 80, 24));
        Assert.Contains("in parts; lines of their own: alto, men", Drawn(LiveFixture.Rung with { Warmup = LiveFixture.Rung.Warmup with { Steps = steps } }, 80, 24));
    }

    [Fact]
    public void Equal_models_draw_equal_screens() => Assert.Equal(Drawn(LiveFixture.Rung, 80, 24), Drawn(LiveFixture.Rung, 80, 24));

    private static ScreenModel Model(LiveSession session) =>
        new(session, new("Sound: none", "log", false), MarkLine.Closed, LiveFixture.Now);

    private static string Drawn(LiveSession session, int width, int height) => ScreenPresenter.Draw(Model(session), width, height).ToString();
}
