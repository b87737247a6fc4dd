using System.Text.Json;
using WarmupConsole.Storage.Choirs;

namespace WarmupConsole.Tests.App;

public sealed class RangesCommandTests
{
    private const string Choir = """
        format: 1
        name: The Lantern Quay Singers
        demo: false
        parts:
          - {id: soprano, extreme: C4-G5, comfortable: C4-F5, start: true}
          - {id: alto, extreme: G3-D5, comfortable: A3-C5, ranges: [{from: 2027-01-12, extreme: F3-D5, comfortable: A3-C5}]}

        """;

    /// <summary>Begin; up from E4: two good, the third the last easy one; one more good, then none; down: the first the last easy one; two more, keep.</summary>
    private static readonly string[] WholeWalk = ["", "", "e", "l", "", "n", "l", "", "L ", "y"];

    [Fact]
    public void They_are_listed_with_their_days_and_starts()
    {
        using Desk desk = new();
        desk.Write(Choir, "choir.yaml");
        Assert.Equal(0, desk.Run("ranges"));
        Assert.Equal(
            """
            Soprano  C4–G5 at all, C4–F5 with ease  a start from a published table, not yet their own: warmup ranges check
            Alto     F3–D5 at all, A3–C5 with ease  since 2027-01-12

            """,
            desk.Output);
    }

    [Fact]
    public void They_are_printed_for_other_programs_too()
    {
        using Desk desk = new();
        desk.Write(Choir.Replace("demo: false", "notes: german"), "choir.yaml");
        Assert.Equal(0, desk.Run("ranges", "--json"));
        JsonElement[] parts = [.. JsonDocument.Parse(desk.Output).RootElement.GetProperty("parts").EnumerateArray()];
        Assert.Equal(["soprano", "alto"], parts.Select(part => part.GetProperty("part").GetString()));
        Assert.Equal("C4-F5", parts[0].GetProperty("comfortable").GetString());
        Assert.Equal([true, false], parts.Select(part => part.GetProperty("is_start").GetBoolean()));
        Assert.Equal("2027-01-12", parts[1].GetProperty("since").GetString());
        Assert.Equal("F3-D5", parts[1].GetProperty("extreme").GetString());
    }

    [Theory]
    [InlineData("from: 2026-12-21", true)]
    [InlineData("from: 2026-12-22", false)]
    public void Changing_voices_are_due_again_after_eight_weeks(string from, bool isDue)
    {
        using Desk desk = new();
        desk.Write(Choir.Replace("{id: alto,", "{id: alto, groups: [changing],").Replace("from: 2027-01-12", from), "choir.yaml");
        desk.Run("ranges");
        Assert.Equal(isDue, desk.Output.Contains("Alto: changing voices are tested anew", StringComparison.Ordinal));
    }

    [Fact]
    public void A_walk_through_one_part_is_written_as_a_dated_line()
    {
        using Desk desk = new(WholeWalk);
        desk.Write(Choir, "choir.yaml");
        Assert.Equal(0, desk.Run("ranges", "check", "--part", "a"));
        Assert.Equal([64, 65, 66, 67, 68, 64, 63, 62], desk.Given);
        Assert.Equal(
            """{"format": 1, "from": "2027-02-16", "part": "alto", "extreme": "D4-G4", "comfortable": "E4-Gb4"}""" + "\n",
            File.ReadAllText(desk.PathOf("ranges.jsonl")));
        Assert.Contains("Alto: D4–G4 at all, E4–G♭4 with ease", desk.Output, StringComparison.Ordinal);
        desk.Run("ranges");
        Assert.Contains("Alto     D4–G4 at all, E4–G♭4 with ease  since 2027-02-16", desk.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_caution_comes_before_the_first_note_and_the_last_one_is_ended()
    {
        using Desk desk = new(WholeWalk);
        desk.Write(Choir, "choir.yaml");
        desk.Run("ranges", "check", "--part", "alto");
        Assert.StartsWith("Nobody's voice is pushed here.", desk.Output, StringComparison.Ordinal);
        Assert.Equal(desk.Given.Order(), desk.Ended.Order());
    }

    [Fact]
    public void Without_a_piano_it_goes_the_same_way()
    {
        using Desk desk = new(WholeWalk);
        desk.Write(Choir, "choir.yaml");
        Assert.Equal(0, desk.Run("ranges", "check", "--part", "alto", "--port", "none"));
        Assert.Empty(desk.Given);
        Assert.Contains("If you hear no piano, give the notes yourself.", desk.Output, StringComparison.Ordinal);
        Assert.Single(RangesFile.Load(desk.PathOf("ranges.jsonl")).Value!);
    }

    [Fact]
    public void Part_after_part_is_asked_and_each_may_be_skipped()
    {
        using Desk desk = new(["s", "", "l", "l", "l", "l", "y"]);
        desk.Write(Choir, "choir.yaml");
        desk.Run("ranges", "check");
        Assert.Equal("alto", Assert.Single(RangesFile.Load(desk.PathOf("ranges.jsonl")).Value!).PartId);
    }

    [Theory]
    [InlineData("")]
    [InlineData("n")]
    [InlineData("q")]
    [InlineData("yes", true)]
    public void Nothing_is_written_unless_it_is_said(string answer, bool isWritten = false)
    {
        using Desk desk = new(["", "l", "l", "l", "l", answer]);
        desk.Write(Choir, "choir.yaml");
        Assert.Equal(0, desk.Run("ranges", "check", "--part", "alto"));
        Assert.Equal(isWritten, File.Exists(desk.PathOf("ranges.jsonl")));
    }

    [Fact]
    public void Again_gives_the_same_note_back_the_one_before_and_anything_else_tells_the_keys()
    {
        using Desk desk = new(["", "", "a", "b", "?", "q"]);
        desk.Write(Choir, "choir.yaml");
        desk.Run("ranges", "check", "--part", "alto");
        Assert.Equal([64, 65, 65, 64, 64], desk.Given);
        Assert.Equal(3, desk.Output.Split("l this was the last one").Length);
    }

    [Fact]
    public void A_demo_choir_is_written_to_nowhere_but_the_settings_folder()
    {
        using Desk desk = new(WholeWalk);
        desk.Write(Choir.Replace("demo: false", "demo: true"), "quay", "choir.yaml");
        desk.Run("ranges", "check", "--part", "alto", "--choir", desk.PathOf("quay"));
        Assert.False(File.Exists(desk.PathOf("quay", "ranges.jsonl")));
        Assert.Single(RangesFile.Load(desk.PathOf("settings", "demo", "quay", "ranges.jsonl")).Value!);
    }

    [Fact]
    public void Notes_are_shown_as_the_choir_names_them()
    {
        using Desk desk = new(["", "q"]);
        desk.Write(Choir.Replace("demo: false", "notes: german"), "choir.yaml");
        desk.Run("ranges", "check", "--part", "alto");
        Assert.Contains("upwards, with ease: e1", desk.Output, StringComparison.Ordinal);
        Assert.Contains("until now f–d2 at all, a–c2 with ease", desk.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_part_is_told_with_those_there_are()
    {
        using Desk desk = new([]);
        desk.Write(Choir, "choir.yaml");
        Assert.Equal(2, desk.Run("ranges", "check", "--part", "tenor"));
        Assert.Contains("There is no part 'tenor' in this choir; write one of soprano, alto.", desk.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void With_nobody_to_answer_it_says_so()
    {
        using Desk desk = new(answers: null);
        desk.Write(Choir, "choir.yaml");
        Assert.Equal(2, desk.Run("ranges", "check"));
        Assert.Contains("needs a terminal", desk.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_written_is_told()
    {
        using Desk desk = new(WholeWalk);
        desk.Write(Choir.Replace("demo: false", "demo: true"), "choir.yaml");
        desk.Write("in the way", "settings");
        Assert.Equal(2, desk.Run("ranges", "check", "--part", "alto"));
        Assert.Contains("cannot be written", desk.Errors, StringComparison.Ordinal);
    }
}
