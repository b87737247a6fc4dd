using System.Text.Json;
using WarmupConsole.App;
using WarmupConsole.App.Reports;
using WarmupConsole.Tests.Sessions.Findings.Seasons;

namespace WarmupConsole.Tests.App;

/// <summary>The last weeks as the director sees them: six evenings, in which one part sags at one pitch.</summary>
public sealed class ReviewCommandTests : IDisposable
{
    private static readonly Season Season = SeasonSimulator.Make(new(1001, 6, 1, 0.40));

    private readonly CommandRun _run = new();
    private readonly IReadOnlyList<string> _logs;

    public ReviewCommandTests() => _logs = SeasonFolder.Write(_run.Folder, Season);

    public void Dispose() => _run.Dispose();

    [Fact]
    public void The_review_tells_the_hidden_weakness_with_its_evidence()
    {
        string id = Id();
        Weakness hidden = Season.Hidden[0];
        Assert.StartsWith($"{hidden.Part}-{hidden.Kind}-", id, StringComparison.Ordinal);
        Assert.Equal(ExitCodes.Ok, _run.Type("review"));
        Assert.Contains($"  [{id}]", _run.Output, StringComparison.Ordinal);
        Assert.Contains("What 6 sessions show, 12 January 2027 to 16 February 2027", _run.Output, StringComparison.Ordinal);
        Assert.Matches(@"Evidence: \d+ marks, such as ""\w+ \w+"" \(2027-", _run.Output);

        // The folder of this choir lacks the exercises that its logs hold.
        Assert.Matches(@"\nLeft out\n   \d+ exercises led and not among the exercises now \([a-z, -]+\): they count for no purpose\.\n$", _run.Output);
    }

    [Fact]
    public void As_json_the_season_stands_beside_the_last_session()
    {
        JsonElement finding = Finding();
        Weakness hidden = Season.Hidden[0];
        Assert.Equal((hidden.Part, hidden.Kind, hidden.Midi), (finding.GetProperty("part").GetString(), finding.GetProperty("kind").GetString(), finding.GetProperty("midi").GetInt32()));
        JsonElement rate = finding.GetProperty("rate");
        Assert.InRange(hidden.MarkedRate, rate.GetProperty("low").GetDouble(), rate.GetProperty("high").GetDouble());
        Assert.Equal(6, finding.GetProperty("sessions").GetArrayLength());
        Assert.True(JsonDocument.Parse(_run.Output).RootElement.TryGetProperty("marks", out _));
    }

    [Fact]
    public void Purposes_and_times_stand_in_text_and_json()
    {
        Assert.Equal(ExitCodes.Ok, _run.Type("review"));
        Assert.Contains("\nPurposes\n   Never: ", _run.Output, StringComparison.Ordinal);
        Assert.Matches(@"\nTime learnt\n   [A-Za-z-]+[A-Za-z, -]* +\d+ times, usually \d+:\d\d, of it talk \d+:\d\d\n", _run.Output);
        Assert.Equal(ExitCodes.Ok, _run.Type("review", "--json"));
        JsonElement season = JsonDocument.Parse(_run.Output).RootElement.GetProperty("season");
        Assert.Equal(22, season.GetProperty("purposes").GetArrayLength());
        Assert.All(season.GetProperty("exercises").EnumerateArray(), exercise => Assert.True(exercise.GetProperty("spent_seconds").GetDouble() > exercise.GetProperty("talk_seconds").GetDouble()));
    }

    [Fact]
    public void The_whole_screen_needs_a_terminal()
    {
        Assert.Equal(ExitCodes.BadInput, _run.Type("review", "--screen"));
        Assert.Contains(AppTexts.NoTerminal, _run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void As_csv_every_count_is_a_row_whose_interval_holds_its_share()
    {
        Assert.Equal(ExitCodes.Ok, _run.Type("review", "--csv"));
        string[] lines = _run.Output.TrimEnd().Split("\r\n");
        Assert.Equal(RatesCsv.Head, lines[0]);
        Assert.Equal(["length", "loudness", "minute", "pitch", "place", "vowel"], lines.Skip(1).Select(line => line.Split(',')[2]).Distinct().Order());
        Assert.All(lines.Skip(1).Select(line => line.Split(',')), row => Assert.InRange(Number(row[6]), Number(row[7]), Number(row[8])));
    }

    [Fact]
    public void A_dismissed_finding_is_told_no_more_until_it_is_restored()
    {
        string id = Id();
        Assert.Equal(ExitCodes.Ok, _run.Type("review", "dismiss", id, "--why", "that was \"my\" piano"));
        Assert.Equal(
            $$"""{"format": 1, "on": "2027-02-16", "finding": "{{id}}", "do": "dismiss", "why": "that was \"my\" piano"}""" + "\n",
            File.ReadAllText(_run.Folder.PathOf("decisions.jsonl")));

        Assert.Equal(ExitCodes.Ok, _run.Type("review"));
        Assert.DoesNotContain($"[{id}]", _run.Output, StringComparison.Ordinal);
        Assert.Contains($"{id}: dismissed on 2027-02-16, that was \"my\" piano.", _run.Output, StringComparison.Ordinal);

        Assert.Equal(ExitCodes.Ok, _run.Type("review", "restore", id));
        Assert.Equal(id, Id());
        Assert.Equal(ExitCodes.BadInput, _run.Type("review", "restore", id));
        Assert.Contains(AppTexts.NotDismissed(id), _run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_what_was_found_can_be_dismissed_and_only_with_a_reason()
    {
        string id = Id();
        Assert.Equal(ExitCodes.BadInput, _run.Type("review", "dismiss", "alto-flat-c9", "--why", "no"));
        Assert.Contains($"There is no finding 'alto-flat-c9' now. There are: {id}", _run.Errors, StringComparison.Ordinal);
        Assert.Equal(ExitCodes.BadInput, _run.Type("review", "dismiss", Id()));
        Assert.False(File.Exists(_run.Folder.PathOf("decisions.jsonl")));
    }

    [Fact]
    public void A_bad_line_among_the_decisions_is_told_and_the_others_hold()
    {
        string id = Id();
        Assert.Equal(ExitCodes.Ok, _run.Type("review", "dismiss", id, "--why", "piano"));
        File.AppendAllText(_run.Folder.PathOf("decisions.jsonl"), "{\"format\": 1, \"on\": \"someday\"}\n");
        Assert.Equal(ExitCodes.Ok, _run.Type("review"));
        Assert.Contains($"{id}: dismissed on", _run.Output, StringComparison.Ordinal);
        Assert.Contains("decisions.jsonl:2:", _run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_needs_nothing_else_and_its_charts_are_described()
    {
        string page = _run.Folder.PathOf("review.html");
        Assert.Equal(ExitCodes.Ok, _run.Type("review", "--html", page));
        string text = File.ReadAllText(page);
        Assert.Contains("<html lang=\"en\">", text, StringComparison.Ordinal);
        Assert.Matches("<svg [^>]*role=\"img\" aria-label=\"[^\"]+session by session: 12 January", text);
        Assert.Contains("<th scope=\"row\">", text, StringComparison.Ordinal);
        Assert.All((string[])["<script", "http:", "https:", "<link", "url("], outside => Assert.DoesNotContain(outside, text, StringComparison.OrdinalIgnoreCase));
        Assert.Equal(ExitCodes.BadInput, _run.Type("review", "--html", page));
    }

    [Fact]
    public void Whatever_was_typed_cannot_become_part_of_the_page()
    {
        string evil = _run.Folder.Write(File.ReadAllText(_run.Folder.PathOf("choir.yaml")).Replace("The Net Loft Singers", "<script>alert(1)</script>", StringComparison.Ordinal), "choir.yaml");
        Assert.Equal(ExitCodes.Ok, _run.Type("review", "--html", _run.Folder.PathOf("evil.html")));
        Assert.DoesNotContain("<script", File.ReadAllText(_run.Folder.PathOf("evil.html")), StringComparison.Ordinal);
        Assert.NotEmpty(evil);
    }

    [Fact]
    public void Weeks_narrow_what_counts_and_the_rest_is_told()
    {
        Assert.Equal(ExitCodes.Ok, _run.Type("review", "--weeks", "2"));
        Assert.Contains("What 3 sessions show", _run.Output, StringComparison.Ordinal);
        Assert.Contains("3 sessions older than 2 weeks before the newest one: not weighed", _run.Output, StringComparison.Ordinal);
        Assert.Equal(ExitCodes.BadInput, _run.Type("review", "--weeks", "-1"));
    }

    [Fact]
    public void A_range_moves_only_when_it_is_accepted()
    {
        Assert.Equal(ExitCodes.Ok, _run.Type("review", "--json"));
        JsonElement[] proposed = [.. JsonDocument.Parse(_run.Output).RootElement.GetProperty("season").GetProperty("ranges").EnumerateArray()];
        JsonElement advice = Assert.Single(proposed, one => one.GetProperty("part").GetString() == "soprano");
        string comfortable = advice.GetProperty("comfortable").GetString()!;
        Assert.Equal(ExitCodes.Ok, _run.Type("ranges", "accept", "soprano"));
        Assert.Equal(
            $$"""{"format": 1, "from": "2027-02-16", "part": "soprano", "extreme": "C4-G5", "comfortable": "{{comfortable}}"}""" + "\n",
            File.ReadAllText(_run.Folder.PathOf("ranges.jsonl")));
        Assert.Equal(ExitCodes.Ok, _run.Type("ranges"));
        Assert.Contains("since 2027-02-16", _run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_evidence_or_for_a_part_that_is_not_there_no_range_moves()
    {
        Assert.Equal(ExitCodes.BadInput, _run.Type("ranges", "accept", "descant"));
        Assert.Contains("soprano, alto, tenor, bass", _run.Errors, StringComparison.Ordinal);
        foreach (string log in _logs.Skip(2))
        {
            File.Delete(log);
        }

        Assert.Equal(ExitCodes.BadInput, _run.Type("ranges", "accept", "soprano"));
        Assert.Contains(AppTexts.NoAdvice("soprano"), _run.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(_run.Folder.PathOf("ranges.jsonl")));
    }

    [Fact]
    public void The_logs_are_only_read()
    {
        byte[][] before = [.. _logs.Select(File.ReadAllBytes)];
        _run.Type("review");
        Assert.Equal(before, _logs.Select(File.ReadAllBytes));
    }

    private JsonElement Finding()
    {
        Assert.Equal(ExitCodes.Ok, _run.Type("review", "--json"));
        return JsonDocument.Parse(_run.Output).RootElement.GetProperty("season").GetProperty("findings")[0];
    }

    private string Id() => Finding().GetProperty("id").GetString()!;

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
