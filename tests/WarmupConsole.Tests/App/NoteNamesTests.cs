namespace WarmupConsole.Tests.App;

/// <summary>What is shown names its notes as the choir does, everywhere; what is typed is read so; JSON and files stay scientific.</summary>
public sealed class NoteNamesTests : IDisposable
{
    private const string Plan = """
        format: 1
        date: 2027-02-16
        minutes: 15
        steps:
          - {exercise: counted-breath}
          - exercise: hum-home-and-fifth
          - exercise: five-note-scale
            keys: {start: Bb3, limit: soprano, reach: 100, tolerance: 0}
          - {exercise: counted-breath, rounds: 20}

        """;

    private readonly ToolRun tool = new();

    public void Dispose() => tool.Dispose();

    [Theory]
    [InlineData("scientific", "B♭", "F♯5", "C5")]
    [InlineData("helmholtz", "B♭", "f♯''", "c''")]
    [InlineData("german", "B", "fis2", "c2")]
    [InlineData("dutch", "Bes", "fis2", "c2")]
    [InlineData("fixed-do", "Si♭", "Fa♯5", "Do5")]
    public void Keys_reasons_and_the_board_are_named_as_the_choir_does(string notes, string key, string high, string axis)
    {
        Choir(notes);
        Assert.Equal(0, tool.Call("keys", "--exercise", "five-note-scale", "--start", "Bb3", "--limit", "soprano", "--shape", "up"));
        Assert.Contains($"in {key} the sopranos would need ", tool.Output, StringComparison.Ordinal);
        Assert.Contains(high, tool.Output, StringComparison.Ordinal);
        Assert.Contains($"\n{axis} ", tool.Output, StringComparison.Ordinal);
        OnlyIn(notes);
    }

    [Theory]
    [InlineData("german")]
    [InlineData("helmholtz")]
    public void Every_remark_of_the_check_is_named_so(string notes)
    {
        Choir(notes);
        string plan = tool.Put("plans/2027-02-16.yaml", Plan);
        tool.Call("check", plan);
        Assert.Contains("extremes-late", tool.Output, StringComparison.Ordinal);
        OnlyIn(notes);
        tool.Call("keys", plan);
        OnlyIn(notes);
    }

    [Theory]
    [InlineData("german", "b")]
    [InlineData("helmholtz", "b♭")]
    [InlineData("scientific", "Bb3")]
    [InlineData("fixed-do", "sib3")]
    public void A_first_key_is_read_in_the_choirs_names_or_in_those_of_files(string notes, string start)
    {
        Choir(notes);
        Assert.Equal(0, tool.Call("keys", "--exercise", "hum-home-and-fifth", "--start", start, "--limit", "alto", "--json"));
        Assert.Contains("\"tonic\": \"Bb3\"", tool.Output, StringComparison.Ordinal);
        Assert.Equal(0, tool.Call("keys", "--exercise", "hum-home-and-fifth", "--start", "Bb3", "--limit", "alto", "--json"));
        Assert.Contains("\"tonic\": \"Bb3\"", tool.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Needs_are_typed_and_told_in_the_choirs_names_and_kept_in_those_of_files()
    {
        Choir("german");
        Assert.Equal(0, tool.Call("need", "add", "--part", "alto", "--pitch", "h1"));
        Assert.Equal("1. alto: h1\n", tool.Output);
        Assert.Equal(0, tool.Call("need", "add", "--region", "c1-fis1"));
        Assert.Equal("2. everyone: c1–fis1\n", tool.Output);
        Assert.Contains("pitch: B4", File.ReadAllText(tool.PathOf("needs.yaml")).Replace("\"", ""), StringComparison.Ordinal);
        Assert.Contains("region: C4-F#4", File.ReadAllText(tool.PathOf("needs.yaml")).Replace("\"", ""), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("german", "fis2")]
    [InlineData("helmholtz", "f♯''")]
    public void The_next_plan_gives_its_reasons_and_keys_in_the_choirs_names(string notes, string pitch)
    {
        Choir(notes);
        tool.Call("need", "add", "--part", "soprano", "--pitch", "F#5");
        tool.Call("need", "add", "--part", "bass", "--region", "C2-B5");
        Assert.Equal(0, tool.Call("plan", "next"));
        Assert.Contains($"soprano: {pitch}", tool.Output, StringComparison.Ordinal);
        Assert.Contains(" keys c", tool.Output, StringComparison.Ordinal);
        OnlyIn(notes);
    }

    private void Choir(string notes)
    {
        string yaml = File.ReadAllText(tool.PathOf("choir.yaml"));
        tool.Put("choir.yaml", yaml.Replace("format: 1\n", $"format: 1\nnotes: {notes}\n", StringComparison.Ordinal));
    }

    /// <summary>No scientific name, such as F♯5, is left where another naming is set.</summary>
    private void OnlyIn(string notes)
    {
        if (notes is "german" or "helmholtz" or "dutch")
        {
            // The folder has a random name, which may look like one.
            Assert.DoesNotMatch("[A-G][♭♯]?[2-6]([^0-9]|$)", tool.Output.Replace(tool.PathOf(""), "", StringComparison.Ordinal));
        }
    }
}
