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

    // Amateur ranges of a notation program's instrument table, with ease those of hmt Instrument/Choir, "more conservative".
    [Fact]
    public void Four_voices_start_from_the_published_tables()
    {
        using Desk desk = new();
        desk.Run("new", "ours", "--voices", "satb");
        Content content = Content.Load(desk.Composition, null, desk.PathOf("ours")).Value!;
        Assert.Equal(
            ["60-79 60-77", "55-74 55-72", "48-69 48-65", "41-60 43-60"],
            content.Folder.Choir.Parts.Select(part => $"{Midi(part.Range.Extreme)} {Midi(part.Range.Comfortable)}"));
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

    private static string Midi(PitchRange range) => $"{range.Low.Midi}-{range.High.Midi}";

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
