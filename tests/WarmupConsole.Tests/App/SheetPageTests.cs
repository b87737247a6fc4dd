using System.Text.RegularExpressions;
using WarmupConsole.App.Reports;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.TakeAlong;
using WarmupConsole.Tests.Sessions.Live;
using WarmupConsole.Tests.Sessions.TakeAlong;

namespace WarmupConsole.Tests.App;

public sealed partial class SheetPageTests
{
    private static readonly string Page = SheetPage.Write(DemoWarmups.Of("2027-02-09.yaml"), null);

    [Fact]
    public void A_step_is_a_row_with_tempo_keys_who_sings_and_minutes()
    {
        string[] row = Row(11);
        Assert.Equal(["11", "Octave arpeggio 1 3 5 8 5 3 1 on noh nah Whole chords with the melody; V7 and I before each key", "96", "C D♭ D E♭ E F and back", "everyone, but the altos rest in E♭ E F; the basses rest in E♭ E F", "2:04"], row);
        Assert.Equal(["1", "Shoulder circles 2 rounds", "60", "none", "everyone", "0:47"], Row(1));
    }

    [Theory] // V7 and I as in the table of keys that two theory libraries agree on
    [InlineData("C major", "G B D F, then C E G")]
    [InlineData("D♭ major", "A♭ C E♭ G♭, then D♭ F A♭")]
    [InlineData("E major", "B D♯ F♯ A, then E G♯ B")]
    [InlineData("F minor", "C E G B♭, then F A♭ C")]
    public void Every_cue_chord_is_spelled_once(string key, string chords) =>
        Assert.Single(Regex.Matches(Page, $"<div><dt>{key}</dt> <dd>{chords}</dd></div>"));

    [Theory]
    [InlineData(AccompanimentStyle.CueOnly, true, BetweenKeys.Tonic, Click.None, "Sung alone; I before each key")]
    [InlineData(AccompanimentStyle.Melody, false, BetweenKeys.Chromatic, Click.CountIn, "Melody alone; the last I, then the new one, before each key; the count-in tapped")]
    [InlineData(AccompanimentStyle.Broken, false, BetweenKeys.Dominant, Click.EveryBeat, "Broken chords; V7 and I before each key; every beat tapped")]
    public void The_pianist_reads_what_the_plan_asks_of_the_piano(AccompanimentStyle style, bool melody, BetweenKeys between, Click click, string said)
    {
        Warmup warmup = DemoWarmups.Of("2027-02-09.yaml");
        WarmupStep[] steps = [.. warmup.Steps.Select(step => step with { Plan = step.Plan with { Piano = new(style, melody, between, click) } })];
        string page = SheetPage.Write(warmup with { Steps = steps }, null);
        Assert.Equal(steps.Count(step => step.Exercise.IsSung), Regex.Count(page, $"<small>{said}</small>"));
    }

    [Fact]
    public void A_choir_with_names_of_its_own_for_notes_reads_them()
    {
        Warmup warmup = DemoWarmups.Of("2027-02-09.yaml");
        string page = SheetPage.Write(warmup with { Choir = warmup.Choir with { Notes = WarmupConsole.Music.Pitches.NoteNaming.German } }, null);
        Assert.Contains("<dt>Des major</dt> <dd>As C Es Ges, then Des F As</dd>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void It_needs_nothing_else_and_can_be_listened_to()
    {
        Assert.DoesNotMatch("<script|https?://|src=|href=|url\\(", Page);
        Assert.Contains("<html lang=\"en\">", Page, StringComparison.Ordinal);
        Assert.Equal(6, Regex.Count(Page, "<th scope=\"col\">"));
        Assert.Equal(12, Regex.Count(Page, "<th scope=\"row\">"));
        Assert.Single(Regex.Matches(Page, "<h1>"));
        Assert.Contains("@media print", Page, StringComparison.Ordinal);
        Assert.Equal(Regex.Count(Page, "<(table|tr|td|th|dl|div|dt|dd|main|body|small)\\b"), Regex.Count(Page, "</(table|tr|td|th|dl|div|dt|dd|main|body|small)>"));
    }

    [Fact]
    public void A_singer_at_home_reads_the_card_the_instructions_and_their_own_notes()
    {
        Warmup warmup = DemoWarmups.Of("2027-02-16.yaml");
        string page = SheetPage.Write(HomeWarmup.For(warmup, warmup.Choir.Parts[1]), warmup.Choir.Parts[1]);
        Assert.Contains("Only keys within G3–C5, where this part sings with ease.", page, StringComparison.Ordinal);
        Assert.Contains("<aside aria-label=\"Take care of your voice\">", page, StringComparison.Ordinal);
        Assert.Contains("in 4, low and quiet; hold 2, open, nothing shut; out 8, on ss; rest 2; 3 rounds", page, StringComparison.Ordinal);
        Assert.Matches("<td>you, C4–[A-G]♭?[45]</td>", page);
    }

    [Fact]
    public void What_a_file_says_is_text()
    {
        Warmup warmup = LiveFixtures.Whole with { Choir = LiveFixtures.Choir with { Name = "<script>alert(1)</script>\u001b[2J" } };
        string page = SheetPage.Write(warmup, null);
        Assert.DoesNotContain("<script", page, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', page);
    }

    private static string[] Row(int number)
    {
        string row = Page.Split('\n').Single(line => line.StartsWith($"<tr><td class=\"number\">{number}</td>", StringComparison.Ordinal));
        return [.. Cell().Matches(row).Select(cell => Tag().Replace(cell.Groups[1].Value.Replace("<small>", " ", StringComparison.Ordinal), ""))];
    }

    [GeneratedRegex("<t[dh][^>]*>(.*?)</t[dh]>")]
    private static partial Regex Cell();

    [GeneratedRegex("<[^>]+>")]
    private static partial Regex Tag();
}
