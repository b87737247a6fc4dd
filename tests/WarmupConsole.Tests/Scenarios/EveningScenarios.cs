using WarmupConsole.App.Running;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Storage.Needs;
using WarmupConsole.Tui.Keys;

namespace WarmupConsole.Tests.Scenarios;

/// <summary>Before the first note and behind the last: tonight, the pictures at start and end, marks of the rehearsal.</summary>
public class EveningScenarios
{
    [Fact]
    public void Tonight_is_told_in_a_few_keys_shown_logged_and_can_be_changed()
    {
        using Rehearsal room = new("2027-02-16.yaml");
        int lines = Lines(room);
        Assert.Contains("Tonight  as usual", room.Screen);

        room.Do(ScreenCommand.Tonight).Type("b2 colds");
        Assert.Contains("basses: no further than is easy", room.Screen);
        room.Do(ScreenCommand.KeepMark);

        Assert.Contains("Tonight  basses 2 colds", room.Screen);
        Assert.Equal("b2 colds", room.Logged.Select(record => record.Event).OfType<TonightTold>().Last().Raw);

        room.Do(ScreenCommand.Tonight);
        Assert.Contains("basses 2 colds▏", room.Screen);
        room.Type(", colds").Do(ScreenCommand.KeepMark);
        Assert.True(Lines(room) < lines);

        room.Do(ScreenCommand.Tonight).Type("x").Do(ScreenCommand.KeepMark);
        Assert.Contains("Not understood: sopranos colds, altos colds", room.Screen);
        Assert.Contains("basses 2 coldsx▏", room.Screen);
    }

    [Fact]
    public void The_first_picture_tells_check_findings_needs_and_files_once_they_are_known()
    {
        using Rehearsal room = new(width: 80, height: 24);
        Assert.DoesNotContain("Check ", room.Screen);

        room.Show(status => status with { Start = StartLook.Of(room.Composition, room.Content) });

        Assert.Contains("Check    nothing to remark", room.Screen);
        Assert.Matches("Heard    altos flat on", room.Screen);
        Assert.Contains("Needs    none written down", room.Screen);
        Assert.Contains("2027-02-09.yaml in", room.Screen);
        Assert.Contains("Pain: stop.", room.Screen);
    }

    [Fact]
    public void At_the_end_three_lines_tell_what_the_rehearsal_can_build_on()
    {
        using Rehearsal room = new(width: 80, height: 24);
        room.LeadStep(9).LeadToRung(2).Type("a f").Do(ScreenCommand.KeepMark).Type("s strained").Do(ScreenCommand.KeepMark).RestOfStep().Do(LiveAction.End);

        Assert.Contains("For the rehearsal", room.Screen);
        Assert.Matches("Warmed up without a mark of strain: .*altos up to", room.Screen);
        Assert.Contains("To spare: sopranos strained (once, in", room.Screen);
        Assert.Contains("To listen for: altos flat (once, in", room.Screen);

        room.Type("b g").Do(ScreenCommand.KeepMark);
        Assert.Contains("Warmed up well: basses good", room.Screen);
    }

    [Fact]
    public void A_mark_of_the_rehearsal_becomes_a_need()
    {
        using Rehearsal room = new();
        room.Do(LiveAction.GoOn).Do(LiveAction.End);
        room.Do(ScreenCommand.RehearsalMark).Type("Harbour hymn 12-15 a flat at B4").Do(ScreenCommand.KeepMark);

        Assert.Contains("Harbour hymn, bars 12-15: altos flat on B4", room.Screen);
        Assert.Contains("need 1: alto: B4, for Harbour hymn, bars 12-15", room.Screen);
        Assert.Equal(71, NeedsBook.Open(room.Content.Folder).Value!.Needs.Single().Pitch!.Value.Midi);

        room.Do(ScreenCommand.RehearsalMark).Type("the door").Do(ScreenCommand.KeepMark);
        Assert.Contains("no need was made of it", room.Screen);
        Assert.Equal(2, room.Logged.Select(record => record.Event).OfType<RehearsalMarked>().Count());
    }

    [Fact]
    public void A_needs_file_that_cannot_be_read_is_left_alone_and_told()
    {
        using Rehearsal room = new();
        string path = Path.Combine(room.Content.Folder.WriteRoot, NeedsFile.Name);
        Directory.CreateDirectory(room.Content.Folder.WriteRoot);
        File.WriteAllText(path, "format: 1\nneeds: what?\n");
        room.Do(LiveAction.GoOn).Do(LiveAction.End).Do(ScreenCommand.RehearsalMark).Type("Hymn 3 a flat").Do(ScreenCommand.KeepMark);

        Assert.Contains("Kept in the log, but no need could be written", room.Screen);
        Assert.Equal("format: 1\nneeds: what?\n", File.ReadAllText(path));
    }

    [Fact]
    public void Leaving_keeps_what_was_typed_of_the_rehearsal()
    {
        using Rehearsal room = new();
        room.Do(LiveAction.GoOn).Do(LiveAction.End).Do(ScreenCommand.RehearsalMark).Type("Hymn 3 a flat").Do(ScreenCommand.Leave);

        Assert.Equal("Hymn 3 a flat", room.Logged.Select(record => record.Event).OfType<RehearsalMarked>().Single().Raw);
    }

    /// <summary>How often a part sings a key in all steps together.</summary>
    private static int Lines(Rehearsal room) => room.Session.Warmup.Steps.SelectMany(step => step.Ladder.Rungs).Sum(rung => rung.Parts.Count(part => part.Sings));
}
