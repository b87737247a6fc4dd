using System.Text.Json;
using WarmupConsole.App;

namespace WarmupConsole.Tests.App;

public sealed class CommandTests : IDisposable
{
    private const string Choir = """
        format: 1
        name: The Net Loft Singers
        parts:
          - {id: soprano, extreme: C4-G5, comfortable: C4-F5}
          - {id: alto, extreme: G3-D5, comfortable: G3-C5}
        """;

    private readonly CommandRun _run = new();

    public void Dispose() => _run.Dispose();

    [Fact]
    public void Keys_as_json_give_each_rung_with_sounding_numbers_and_seconds()
    {
        Assert.Equal(ExitCodes.Ok, _run.Type("keys", CommandRun.DemoPlan("2027-02-09.yaml"), "--json"));
        JsonElement steps = JsonDocument.Parse(_run.Output).RootElement.GetProperty("steps");
        JsonElement arpeggio = steps.EnumerateArray().Single(step => step.GetProperty("exercise").GetString() == "octave-arpeggio").GetProperty("rungs");
        Assert.Equal([60, 61, 62, 63, 64, 65, 64, 63, 62, 61, 60], arpeggio.EnumerateArray().Select(rung => rung.GetProperty("midi").GetInt32()));
        JsonElement top = arpeggio[5];
        Assert.Equal("F4", top.GetProperty("tonic").GetString());
        Assert.Equal(
            [("soprano", true, 65, 77), ("alto", false, 65, 77), ("tenor", true, 53, 65), ("bass", false, 53, 65)],
            top.GetProperty("parts").EnumerateArray().Select(part => (
                part.GetProperty("part").GetString(),
                part.GetProperty("sings").GetBoolean(),
                part.GetProperty("low").GetInt32(),
                part.GetProperty("high").GetInt32())));
    }

    [Fact]
    public void The_seconds_of_a_rung_are_its_beats_and_the_breath_at_its_tempo()
    {
        _run.Folder.Write(Choir, "choir.yaml");
        string plan = _run.Folder.Write("format: 1\nsteps:\n  - {exercise: five-note-scale, tempo: 60, breath: 3, keys: {most: 1}}\n", "plans", "a.yaml");
        Assert.Equal(ExitCodes.Ok, _run.Type("keys", plan, "--json"));
        JsonElement rung = JsonDocument.Parse(_run.Output).RootElement.GetProperty("steps")[0].GetProperty("rungs")[0];
        Assert.Equal(8 + 3, rung.GetProperty("seconds").GetDouble()); // eight beats of pattern
    }

    [Fact]
    public void Keys_as_text_say_who_rests_and_why_a_ladder_ends()
    {
        Assert.Equal(ExitCodes.Ok, _run.Type("keys", CommandRun.DemoPlan("2027-02-09.yaml")));
        Assert.Contains("(Alto rests)", _run.Output, StringComparison.Ordinal);
        Assert.Contains("Stops at F: in G♭ the sopranos would need G♭5, a semitone above their comfortable F5.", _run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_good_plan_checks_with_0_a_disordered_one_with_1()
    {
        Assert.Equal(ExitCodes.Ok, _run.Type("check", CommandRun.DemoPlan("2027-02-16.yaml")));
        Assert.Contains("errors: 0", _run.Output, StringComparison.Ordinal);

        _run.Folder.Write(Choir, "choir.yaml");
        string plan = _run.Folder.Write("format: 1\nminutes: 5\nsteps:\n  - exercise: octave-arpeggio\n  - exercise: counted-breath\n", "plans", "b.yaml");
        Assert.Equal(ExitCodes.Findings, _run.Type("check", plan));
        Assert.Contains("error (breath-first)", _run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void All_faults_of_a_plan_are_told_at_their_places_with_2()
    {
        _run.Folder.Write(Choir, "choir.yaml");
        string plan = _run.Folder.Write("format: 1\nminutes: 99\nsteps:\n  - exercise: fife-note-scale\n    tempo: fast\n    kyes: {}\n", "plans", "c.yaml");
        Assert.Equal(ExitCodes.BadInput, _run.Type("check", plan));
        Assert.Empty(_run.Output);
        Assert.Contains($"{plan}:2:10:", _run.Errors, StringComparison.Ordinal);
        Assert.Contains("five-note-scale", _run.Errors, StringComparison.Ordinal);
        Assert.Contains($"{plan}:5:12:", _run.Errors, StringComparison.Ordinal);
        Assert.Contains($"{plan}:6:5:", _run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_plan_and_one_outside_a_choir_folder_are_told_apart()
    {
        Assert.Equal(ExitCodes.BadInput, _run.Type("check", _run.Folder.PathOf("plans", "none.yaml")));
        Assert.Contains(AppTexts.NoSuchPlan, _run.Errors, StringComparison.Ordinal);
        string stray = _run.Folder.Write("format: 1\n", "stray.yaml");
        Assert.Equal(ExitCodes.BadInput, _run.Type("check", stray));
        Assert.Contains(AppTexts.NotInChoirFolder, _run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_choir_folder_in_place_of_a_plan_means_its_newest_plan()
    {
        Assert.Equal(ExitCodes.Ok, _run.Type("keys", CommandRun.Demo));
        Assert.Contains("of 20:00", _run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_any_folder_the_built_in_choir_and_plan_serve()
    {
        Assert.Equal(ExitCodes.Ok, _run.Type("check"));
        Assert.Contains("errors: 0", _run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_last_session_is_reviewed_in_words_and_as_json()
    {
        Assert.Equal(ExitCodes.Ok, _run.Type("review", "--choir", CommandRun.Demo));
        Assert.Contains("altos flat in E (Five notes down, two vowels), typed: altos flat", _run.Output, StringComparison.Ordinal);

        Assert.Equal(ExitCodes.Ok, _run.Type("review", "--choir", CommandRun.Demo, "--json"));
        JsonElement mark = JsonDocument.Parse(_run.Output).RootElement.GetProperty("marks").EnumerateArray().First(mark => mark.GetProperty("raw").GetString() == "altos flat on G");
        Assert.Equal(("alto", "flat", "E4"), (mark.GetProperty("part").GetString(), mark.GetProperty("kind").GetString(), mark.GetProperty("key").GetString()));
        Assert.Equal([67], mark.GetProperty("pitches").EnumerateArray().Select(pitch => pitch.GetInt32()));
    }

    [Fact]
    public void A_log_that_a_console_still_writes_is_running_and_not_cut_off()
    {
        string[] lines = File.ReadAllLines(Path.Combine(CommandRun.Demo, "sessions", "2027-02-09T19-30-00.jsonl"));
        string path = _run.Folder.Write(string.Join('\n', lines[..^1]) + "\n", "sessions", "2027-02-09T19-30-00.jsonl");
        string held = _run.Folder.Write("", "sessions", "2027-02-09T19-30-00.lock");
        using (File.Open(held, FileMode.Open, FileAccess.ReadWrite, FileShare.None))
        {
            Assert.Equal(ExitCodes.Ok, _run.Type("review", path));
            Assert.Contains("Still running, so far", _run.Output, StringComparison.Ordinal);
        }

        Assert.Equal(ExitCodes.Ok, _run.Type("review", path));
        Assert.Contains("Cut off after", _run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_table_shows_marked_pitches_and_with_all_every_one()
    {
        Assert.Equal(ExitCodes.Ok, _run.Type("review", "--choir", CommandRun.Demo));
        int marked = _run.Output.Split('\n').Length;
        Assert.Equal(ExitCodes.Ok, _run.Type("review", "--choir", CommandRun.Demo, "--all"));
        Assert.True(_run.Output.Split('\n').Length > marked);
    }

    [Fact]
    public void Without_a_session_the_review_says_what_to_do()
    {
        _run.Folder.Write(Choir, "choir.yaml");
        Assert.Equal(ExitCodes.BadInput, _run.Type("review"));
        Assert.Contains(AppTexts.NoSessions, _run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Damage_in_a_log_is_reported_with_1_and_the_rest_is_reviewed()
    {
        byte[] log = File.ReadAllBytes(Path.Combine(CommandRun.Demo, "sessions", "2027-02-09T19-30-00.jsonl"));
        int middle = log.AsSpan().IndexOf("rung-started"u8);
        log[middle] ^= 1;
        string path = _run.Folder.PathOf("damaged.jsonl");
        File.WriteAllBytes(path, log);
        Assert.Equal(ExitCodes.Findings, _run.Type("review", path));
        Assert.Contains("altos flat in E", _run.Output, StringComparison.Ordinal);
        Assert.Contains($"{path}, byte ", _run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void To_go_on_and_to_begin_anew_at_once_is_refused()
    {
        Assert.Equal(ExitCodes.BadInput, _run.Type("run", "--resume", "--anew"));
        Assert.Contains(AppTexts.ResumeOrAnew, _run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Settings_that_cannot_be_read_are_told_at_their_place_and_not_overwritten()
    {
        string settings = _run.Folder.PathOf("settings", "settings.yaml");
        Directory.CreateDirectory(Path.GetDirectoryName(settings)!);
        File.WriteAllText(settings, "format: 1\nprot: Piano\n");

        Assert.Equal(ExitCodes.BadInput, _run.Type("ports", "--use", "Organ"));
        Assert.Contains("settings.yaml:2:1: ", _run.Errors, StringComparison.Ordinal);
        Assert.Equal("format: 1\nprot: Piano\n", File.ReadAllText(settings));
    }

    [Fact]
    public void The_next_plan_of_the_demo_is_written_to_the_settings_and_never_over_another()
    {
        Assert.Equal(ExitCodes.Ok, _run.Type("plan", "next", "--choir", CommandRun.Demo));
        string written = _run.Folder.PathOf("settings", "demo", "plans-demo", "plans", "2027-02-16.yaml");
        string before = File.ReadAllText(written);
        Assert.Contains("altos flat", before, StringComparison.Ordinal);
        Assert.Equal(ExitCodes.Ok, _run.Type("check", written, "--choir", CommandRun.Demo));

        Assert.Equal(ExitCodes.BadInput, _run.Type("plan", "next", "--choir", CommandRun.Demo));
        Assert.Equal($"{written}: there is already a plan for that day, and nothing is overwritten: write another day with --date, from 2027-02-10 on, or move that plan away{Environment.NewLine}", _run.Errors);
        Assert.Empty(_run.Output);
        Assert.Equal(before, File.ReadAllText(written));
        Assert.Equal(ExitCodes.Ok, _run.Type("plan", "next", "--choir", CommandRun.Demo, "--date", "2027-03-02"));
    }

    [Fact]
    public void A_day_that_is_not_after_the_last_plan_is_refused_with_the_days_that_are_allowed()
    {
        Assert.Equal(ExitCodes.BadInput, _run.Type("plan", "next", "--choir", CommandRun.Demo, "--date", "2027-02-09"));
        Assert.Contains("--date: 2027-02-09 is not after the last plan, which is of 2027-02-09: write a day from 2027-02-10 on", _run.Errors, StringComparison.Ordinal);
        Assert.Equal(ExitCodes.Ok, _run.Type("plan", "next", "--choir", CommandRun.Demo, "--date", "2027-02-10"));
    }

    [Fact]
    public void A_plan_without_a_date_inside_has_that_of_its_name_and_the_next_one_keeps_the_weekday()
    {
        _run.Folder.Write(Choir, "choir.yaml");
        string old = _run.Folder.Write(File.ReadAllText(CommandRun.DemoPlan("2027-02-02.yaml")).Replace("date: 2027-02-02\n", "", StringComparison.Ordinal), "plans", "2027-02-03.yaml");
        Assert.Equal(ExitCodes.BadInput, _run.Type("plan", "next", "--date", "2027-02-03"));
        Assert.Contains("which is of 2027-02-03", _run.Errors, StringComparison.Ordinal);

        // Today is the 16th, a Tuesday: the Wednesday after the last plan is past, the next one is not.
        Assert.Equal(ExitCodes.Ok, _run.Type("plan", "next"));
        Assert.True(File.Exists(Path.Combine(Path.GetDirectoryName(old)!, "2027-02-17.yaml")));
    }

    [Fact]
    public void A_bare_rehearsal_is_not_carried_on_but_the_plan_before_it()
    {
        _run.Folder.Write(Choir, "choir.yaml");
        _run.Folder.Write("format: 1\ndate: 2027-02-16\nbare: {told: true, because: cold voices}\n", "plans", "2027-02-16.yaml");
        Assert.Equal(ExitCodes.BadInput, _run.Type("plan", "next"));
        Assert.Contains("there is already a plan for that day", _run.Errors, StringComparison.Ordinal);

        _run.Folder.Write(File.ReadAllText(CommandRun.DemoPlan("2027-02-02.yaml")), "plans", "2027-02-02.yaml");
        Assert.Equal(ExitCodes.Ok, _run.Type("plan", "next", "--date", "2027-02-23"));
        Assert.Contains("Plan for 2027-02-23, no concert is near, against 2027-02-02", _run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void No_plan_is_made_from_a_session_that_is_still_led()
    {
        _run.Folder.Write(Choir, "choir.yaml");
        string[] lines = File.ReadAllLines(Path.Combine(CommandRun.Demo, "sessions", "2027-02-09T19-30-00.jsonl"));
        _run.Folder.Write(string.Join('\n', lines[..^1]) + "\n", "sessions", "2027-02-09T19-30-00.jsonl");
        string held = _run.Folder.Write("", "sessions", "2027-02-09T19-30-00.lock");
        using FileStream writer = File.Open(held, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        Assert.Equal(ExitCodes.BadInput, _run.Type("plan", "next"));
        Assert.Contains(AppTexts.StillRunning, _run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void An_exercise_of_the_last_plan_that_is_gone_is_named()
    {
        _run.Folder.Write(Choir, "choir.yaml");
        File.Copy(Path.Combine(CommandRun.Demo, "sessions", "2027-02-09T19-30-00.jsonl"), _run.Folder.Write("", "sessions", "2027-02-09T19-30-00.jsonl"), overwrite: true);
        Assert.Equal(ExitCodes.Ok, _run.Type("plan", "next"));
        Assert.Contains("The last plan had 'bells-over-the-quay', which is neither in the catalogue nor in exercises/ any more", _run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check", "--choirs")]
    [InlineData("plan", "next", "--date", "Tuesday")]
    [InlineData("sing")]
    public void What_was_mistyped_is_2(params string[] typed)
    {
        Assert.Equal(ExitCodes.BadInput, _run.Type(typed));
        Assert.Contains(typed[^1], _run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_failure_of_the_program_is_a_sentence_and_70_with_the_details_in_the_diagnostics()
    {
        Assert.Equal(ExitCodes.Internal, _run.Type("ports", "--test"));
        Assert.Equal(AppTexts.Internal("the piano fell over") + Environment.NewLine, _run.Errors);
        Assert.Contains("InvalidOperationException", File.ReadAllText(_run.Folder.PathOf("settings", "diagnostics.log")), StringComparison.Ordinal);
    }

    [Fact]
    public void Control_characters_of_a_file_never_reach_the_terminal()
    {
        _run.Folder.Write(Choir.Replace("The Net Loft Singers", "Net \u001b[31m Loft \u202e", StringComparison.Ordinal), "choir.yaml");
        string plan = _run.Folder.Write("format: 1\nsteps: [{exercise: counted-breath}]\n", "plans", "d.yaml");
        Assert.Equal(ExitCodes.BadInput, _run.Type("check", plan));
        Assert.DoesNotContain('\u001b', _run.Errors);
        Assert.DoesNotContain('\u202e', _run.Errors);
    }
}
