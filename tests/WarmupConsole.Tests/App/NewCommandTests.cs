using WarmupConsole.App.Running;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage;
using WarmupConsole.Storage.Folders;

namespace WarmupConsole.Tests.App;

public sealed class NewCommandTests
{
    public static TheoryData<string> Voicings => [.. NewChoir.Voicings];

    [Theory]
    [MemberData(nameof(Voicings))]
    public void A_new_choir_has_a_first_plan_that_checks_without_a_fault_and_can_be_led(string voices)
    {
        using Desk desk = new();
        Assert.Equal(0, desk.Run("new", "ours", "--voices", voices));
        Assert.Equal(0, desk.Run("check", desk.PathOf("ours", "plans", "2027-02-16.yaml")));
        Content content = Content.Load(desk.Composition, null, desk.PathOf("ours")).Value!;
        Assert.Equal(new DateOnly(2027, 2, 16), content.Plan.Plan.Date);
        Assert.DoesNotContain(PlanCheck.Check(content.Warmup), remark => remark.Severity >= PlanSeverity.Warning);
        Assert.False(content.Folder.Choir.Demo);
        Assert.All(content.Warmup.Steps.Where(step => step.Exercise.IsSung), step => Assert.InRange(step.Ladder.Rungs.Count, 3, 12));
        Assert.All(content.Warmup.Steps.SelectMany(step => step.Ladder.Rungs).SelectMany(rung => rung.Parts), IsEasy);
        Assert.Equal(3, SungRungs(content.Warmup));
    }

    [Theory]
    [MemberData(nameof(Voicings))]
    public void Its_ranges_are_marked_as_a_start(string voices)
    {
        using Desk desk = new();
        desk.Run("new", "ours", "--voices", voices);
        Content content = Content.Load(desk.Composition, null, desk.PathOf("ours")).Value!;
        Assert.All(content.Folder.Choir.Parts, part => Assert.True(part.History[0].IsStart));
        desk.Run("ranges", "--choir", desk.PathOf("ours"));
        Assert.Equal(content.Folder.Choir.Parts.Count, desk.Output.Split("a start from a published table").Length - 1);
    }

    /// <summary>
    /// Extreme: amateur ranges in the instrument table of an open-source notation program (soprano C4-G5, mezzo A3-F5, alto G3-D5, tenor C3-A4,
    /// baritone G2-E4, bass F2-C4). Comfortable: hmt, Instrument/Choir, "more conservative" (S C4-F5, A G3-C5, T C3-F4, B G2-C4), between two voices what both have.
    /// Children: young school age c1-f2 (Young Audiences Music, 2015), first grade's tessitura D4-B4 (M. Thom, university reading task).
    /// Changing: before the change A3-F5 (Cooksey, 1992, as quoted in an open textbook), sixth grade's tessitura B3-D5 (Thom); midvoice F3-A4 and new
    /// baritone B2-D#4, with midvoice I and the settling baritone what they share (Cooksey, from memory).
    /// </summary>
    [Theory]
    [InlineData("satb", "C4–G5 C4–F5 | G3–D5 G3–C5 | C3–A4 C3–F4 | F2–C4 G2–C4")]
    [InlineData("sab", "C4–G5 C4–F5 | G3–D5 G3–C5 | G2–E4 C3–C4")]
    [InlineData("ssaa", "C4–G5 C4–F5 | A3–F5 C4–C5 | G3–D5 G3–C5 | G3–D5 G3–C5")]
    [InlineData("ttbb", "C3–A4 C3–F4 | C3–A4 C3–F4 | G2–E4 C3–C4 | F2–C4 G2–C4")]
    [InlineData("children", "C4–F5 D4–B4")]
    [InlineData("changing", "A3–F5 B3–D5 | F3–A4 A♭3–A4 | B2–D♯4 B2–D4")]
    public void Every_voicing_starts_from_published_tables(string voices, string ranges) => Assert.Equal(
        ranges,
        string.Join(" | ", Started(voices).Select(part => $"{part.Range.Extreme} {part.Range.Comfortable}")));

    // Tables differ by up to a fourth at each end, so a start may not lie outside the widest (the same notation program, "professional") or
    // inside the narrowest (a church-choir director's volunteers, Music Stack Exchange question 5977, 2012, but for his sopranos' B flat).
    [Theory]
    [InlineData(0, "C4-C6", "C4-E5")]
    [InlineData(1, "E3-F5", "G3-C5")]
    [InlineData(2, "C3-C5", "C3-E4")]
    [InlineData(3, "D2-D4", "F2-C4")]
    public void Four_voices_start_inside_the_widest_table_and_hold_the_narrowest(int part, string widest, string narrowest)
    {
        PitchRange start = Started("satb")[part].Range.Extreme;
        Assert.True(PitchRangeText.Parse(widest).Value.Contains(start));
        Assert.True(start.Contains(PitchRangeText.Parse(narrowest).Value));
    }

    [Fact]
    public void What_was_written_is_told_with_what_to_do_next()
    {
        using Desk desk = new();
        desk.Run("new", "ours", "--voices", "ssaa");
        Assert.Contains($"warmup check \"{desk.PathOf("ours", "plans", "2027-02-16.yaml")}\"", desk.Output, StringComparison.Ordinal);
        Assert.Equal(["exercises/example.txt", "plans/2027-02-16.yaml", "choir.yaml"], new[] { "exercises/example.txt", "plans/2027-02-16.yaml", "choir.yaml" }.Where(file => File.Exists(desk.PathOf("ours", file))));
    }

    [Fact]
    public void The_example_of_an_exercise_is_read_once_it_has_its_name()
    {
        using Desk desk = new();
        desk.Run("new", "ours", "--voices", "sab");
        File.Move(desk.PathOf("ours", "exercises", "example.txt"), desk.PathOf("ours", "exercises", "own.yaml"));
        Content content = Content.Load(desk.Composition, null, desk.PathOf("ours")).Value!;
        Assert.Contains(content.Folder.Exercises, exercise => exercise.Id == "our-falling-third");
    }

    [Fact]
    public void A_folder_with_anything_in_it_is_left_alone()
    {
        using Desk desk = new();
        desk.Write("mine", "ours", "letter.txt");
        Assert.Equal(2, desk.Run("new", "ours", "--voices", "satb"));
        Assert.Contains(StorageTexts.NotEmpty, desk.Errors, StringComparison.Ordinal);
        Assert.Equal(["letter.txt"], Directory.EnumerateFileSystemEntries(desk.PathOf("ours")).Select(Path.GetFileName));
        Assert.Equal(2, desk.Run("new", desk.PathOf("ours", "letter.txt"), "--voices", "satb"));
    }

    [Fact]
    public void An_empty_folder_is_furnished()
    {
        using Desk desk = new();
        Directory.CreateDirectory(desk.PathOf("ours"));
        Assert.Equal(0, desk.Run("new", "ours", "--voices", "children"));
    }

    [Theory]
    [InlineData("new", "ours")]
    [InlineData("new", "ours", "--voices", "sattb")]
    [InlineData("new", "--voices", "satb")]
    [InlineData("new", "--vioces", "satb")]
    public void What_cannot_be_understood_makes_nothing(params string[] arguments)
    {
        using Desk desk = new();
        Assert.Equal(2, desk.Run(arguments));
        Assert.Empty(Directory.EnumerateFileSystemEntries(desk.PathOf()));
    }

    private static void IsEasy(RungPart part) => Assert.True(part.Sings && part.Part.Range.Comfortable.Contains(part.Span));

    private static IReadOnlyList<Part> Started(string voices)
    {
        using Desk desk = new();
        desk.Run("new", "ours", "--voices", voices);
        return Content.Load(desk.Composition, null, desk.PathOf("ours")).Value!.Folder.Choir.Parts;
    }

    /// <summary>Leads on from step to step in virtual time until the first sung step has gone through three rungs; how many it went through.</summary>
    private static int SungRungs(Warmup warmup)
    {
        Moment now = default;
        LiveSession session = LiveMachine.Start(warmup, now).Session;
        for (int turns = 0; turns < 500 && !(session.Step?.Exercise.IsSung == true && session.RungIndex == 3); turns++)
        {
            bool waits = session.NextWake is null || session.State is LiveState.Ready or LiveState.Introduce;
            now = waits ? now : session.NextWake!.Value;
            session = LiveMachine.Handle(session, waits ? new LiveInput.Act(LiveAction.GoOn) : new LiveInput.TimePassed(), now).Session;
        }

        return session.RungIndex;
    }
}
