using System.Text.RegularExpressions;
using NAudio.Midi;
using WarmupConsole.App;
using WarmupConsole.Tests.Sessions.TakeAlong;
using WarmupConsole.Tests.Storage.MusicXml.Writing;

namespace WarmupConsole.Tests.App;

public sealed class ExportCommandTests : IDisposable
{
    private readonly ToolRun tool = new();

    public void Dispose() => tool.Dispose();

    [Fact]
    public void A_plan_is_taken_along_in_three_ways_in_one_call()
    {
        Assert.Equal(ExitCodes.Ok, Export("--midi", At("out.mid"), "--musicxml", At("out.musicxml"), "--sheet", At("out.html")));

        Assert.Equal($"Written: {At("out.mid")}\nWritten: {At("out.musicxml")}\nWritten: {At("out.html")}\n", tool.Output);
        ReadMidi midi = new(File.ReadAllBytes(At("out.mid")));
        Assert.Equal((1, 960, 6), (midi.Format, midi.TicksPerBeat, midi.Tracks));
        Assert.Equal("The Lantern Quay Singers: A quarter of an hour, 2027-02-09", Assert.Single(midi.Texts(0, MetaEventType.SequenceTrackName)).Text);
        Assert.Equal(12, midi.Texts(0, MetaEventType.Marker).Count(marker => Regex.IsMatch(marker.Text, "^[0-9]+\\. (?!.* in [A-G][b#]? (major|minor)$)")));
        Assert.Empty(MusicXmlSchema.Errors(File.ReadAllBytes(At("out.musicxml"))));
        Assert.Contains("<caption>The steps in order</caption>", File.ReadAllText(At("out.html")), StringComparison.Ordinal);
        Assert.Equal(["out.html", "out.mid", "out.musicxml"], Made());
    }

    [Theory]
    [InlineData("alto")]
    [InlineData("a")]
    [InlineData("ALTOS")]
    public void A_singer_takes_their_own_part_home_with_the_voice_care_card_in_each_file_and_on_the_screen(string part)
    {
        Assert.Equal(ExitCodes.Ok, Export("--part", part, "--midi", At("out.mid"), "--musicxml", At("out.musicxml"), "--sheet", At("out.html")));

        const string care = "Hoarse for more than about three weeks: see a doctor.";
        Assert.Contains(care, tool.Output, StringComparison.Ordinal);
        Assert.Contains(new ReadMidi(File.ReadAllBytes(At("out.mid"))).Texts(0, MetaEventType.TextEvent), text => text.Text == care);
        Assert.Contains($"<credit-words>{care}</credit-words>", File.ReadAllText(At("out.musicxml")), StringComparison.Ordinal);
        Assert.Contains($"<li>{care}</li>", File.ReadAllText(At("out.html")), StringComparison.Ordinal);
        Assert.DoesNotContain("Soprano", File.ReadAllText(At("out.musicxml")), StringComparison.Ordinal);
        Assert.Contains("for Alto at home", File.ReadAllText(At("out.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void The_demo_folder_is_only_read()
    {
        Assert.Equal(ExitCodes.Ok, tool.Call("export", CommandRun.DemoPlan("2027-02-16.yaml"), "--midi", At("out.mid")));
        Assert.Equal(["out.mid"], Made());
    }

    [Fact]
    public void An_earlier_export_is_written_over_by_force_only()
    {
        Assert.Equal(ExitCodes.Ok, Export("--midi", At("out.mid")));
        byte[] first = File.ReadAllBytes(At("out.mid"));

        Assert.Equal(ExitCodes.BadInput, Export("--part", "bass", "--midi", At("out.mid")));
        Assert.Equal($"{At("out.mid")}: there is already such a file; choose another name, or write over it with --force\n", tool.Errors);
        Assert.Equal(first, File.ReadAllBytes(At("out.mid")));

        Assert.Equal(ExitCodes.Ok, Export("--part", "bass", "--midi", At("out.mid"), "--force"));
        Assert.NotEqual(first, File.ReadAllBytes(At("out.mid")));
        Assert.Equal(ExitCodes.BadInput, Export("--midi", At("choir.yaml"), "--force"));
        Assert.Equal(["out.mid"], Made());
    }

    [Theory]
    [InlineData("Say what to write: --midi FILE", "--part", "alto")]
    [InlineData("There is no part 'alt\uFFFD' in this choir; write one of soprano, alto, tenor, bass.", "--part", "alt\u0007", "--midi", "FOLDER/out.mid")]
    [InlineData("its folder does not exist", "--midi", "FOLDER/out.mid", "--sheet", "FOLDER/missing/out.html")]
    [InlineData("this is a folder", "--midi", "FOLDER/plans")]
    [InlineData("two files are to have this name", "--midi", "FOLDER/out", "--sheet", "FOLDER/plans/../out")]
    [InlineData("it cannot be written", "--midi", "FOLDER/choir.yaml/out.mid")]
    public void What_cannot_be_done_is_told_and_nothing_is_left_behind(string told, params string[] options)
    {
        Assert.Equal(ExitCodes.BadInput, Export([.. options.Select(option => option.Replace("FOLDER", At("."), StringComparison.Ordinal))]));
        Assert.Contains(told, tool.Errors, StringComparison.Ordinal);
        Assert.Empty(Made());
    }

    [Theory]
    [InlineData("format: 1\nsteps:\n  - exercise: no-such-thing\n", "bad.yaml:3:15: ")]
    [InlineData("format: 1\ndate: 2027-02-09\nbare: {told: true, because: a concert this week}\n", "this plan has no steps to take along")]
    public void A_plan_with_errors_or_without_steps_gives_no_file(string plan, string told)
    {
        tool.Put("plans/bad.yaml", plan);
        Assert.Equal(ExitCodes.BadInput, tool.Call("export", At("plans/bad.yaml"), "--midi", At("out.mid")));
        Assert.Contains(told, tool.Errors, StringComparison.Ordinal);
        Assert.Empty(Made());
    }

    [Fact]
    public void A_part_that_can_sing_nothing_of_a_plan_gets_no_file_and_the_reason()
    {
        tool.Put("plans/wide.yaml", "format: 1\nsteps:\n  - exercise: counted-breath\n  - exercise: nine-note-run\n");
        Assert.Equal(ExitCodes.Ok, tool.Call("export", At("plans/wide.yaml"), "--part", "soprano", "--midi", At("out.mid")));
        File.Delete(At("out.mid"));

        tool.Put("plans/breath.yaml", "format: 1\nsteps:\n  - exercise: counted-breath\n");
        Assert.Equal(ExitCodes.BadInput, tool.Call("export", At("plans/breath.yaml"), "--part", "soprano", "--midi", At("out.mid")));
        Assert.Contains("no key of this plan lies where the sopranos sing with ease", tool.Errors, StringComparison.Ordinal);
        Assert.Empty(Made());
    }

    [Fact]
    public void A_step_that_does_not_fit_a_part_is_named()
    {
        tool.Put("plans/wide.yaml", "format: 1\nsteps:\n  - exercise: triad\n  - exercise: wide\n");
        tool.Put("exercises/wide.yaml", "format: 1\nexercises:\n  - id: wide\n    title: Two octaves\n    stage: sung\n    pattern: \"1 8 15 8 1\"\n    tempo: {default: 80, from: 60, to: 90}\n    articulation: legato\n");
        Assert.Equal(ExitCodes.Ok, tool.Call("export", At("plans/wide.yaml"), "--part", "bass", "--sheet", At("out.html")));
        Assert.Contains("Left out, for no key fits: 2. Two octaves\n", tool.Output, StringComparison.Ordinal);
        Assert.Contains("none fits: left out", File.ReadAllText(At("out.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_choir_of_more_parts_than_a_midi_file_has_room_for_is_told_to_choose_one()
    {
        string parts = string.Concat(Enumerable.Range(1, 15).Select(n => $"  - {{id: voice-{n}, name: Voice {n}, letters: [v{n}], extreme: C4-G5, comfortable: C4-F5}}\n"));
        tool.Put("choir.yaml", $"format: 1\nname: Many\nparts:\n{parts}");
        tool.Put("plans/many.yaml", "format: 1\nsteps:\n  - exercise: triad\n");
        Assert.Equal(ExitCodes.BadInput, tool.Call("export", At("plans/many.yaml"), "--midi", At("out.mid")));
        Assert.Contains("a MIDI file has room for the piano and 14 parts, and this choir has 15: choose one with --part", tool.Errors, StringComparison.Ordinal);
        Assert.Equal(ExitCodes.Ok, tool.Call("export", At("plans/many.yaml"), "--midi", At("out.mid"), "--part", "voice-15"));
    }

    private int Export(params string[] options) => tool.Call(["export", At("plans/2027-02-09.yaml"), .. options]);

    private string At(string name) => tool.PathOf(name);

    /// <summary>What stands in the folder besides the copy of the demo.</summary>
    private string[] Made() => [.. Directory.EnumerateFiles(At("."), "*", SearchOption.AllDirectories)
        .Where(path => !path.EndsWith(".yaml", StringComparison.Ordinal))
        .Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];
}
