using System.Text;
using WarmupConsole.Storage;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Tests.Storage.Yaml;

public sealed class YamlTreeTests
{
    [Theory]
    [InlineData("a: &x 1\n", "&x", StorageTexts.Anchor)]
    [InlineData("a: 1\nb: *x\n", "*x", StorageTexts.Alias)]
    [InlineData("&x {a: [*x]: 1}\n", "&x", StorageTexts.Anchor)]
    [InlineData("a: !!int 1\n", "!!int", StorageTexts.Tag)]
    [InlineData("a: !<!x> {b: 1}\n", "!<", StorageTexts.Tag)]
    [InlineData("a: 1\n---\nb: 1\n", "---", StorageTexts.SecondDocument)]
    [InlineData("a:\n\tb: 1\n", "\tb", StorageTexts.TabIndent)]
    [InlineData("a:\n  - 1\n \t- 2\n", "\t- 2", StorageTexts.TabIndent)]
    [InlineData("- 1\n- 2\n", "- 1", StorageTexts.TopNotNames)]
    [InlineData("[a]: 1\n", "[a]", StorageTexts.NameNotText)]
    [InlineData("a: 1\nb: 2\na: 3\n", "a: 3", "'a' stands here a second time")]
    [InlineData("{b: {a: 1, \"a\": 2}}\n", "\"a\"", "'a' stands here a second time")]
    [InlineData("a: \u202Eevil\n", "\u202E", "U+202E")]
    [InlineData("a: \"\\u2066evil\"\n", "\"\\u2066", "U+2066")]
    [InlineData("a: \"\\e[2J\"\n", "\"\\e[2J", "U+001B")]
    [InlineData("# \u001b[2J\na: 1\n", "\u001b", "U+001B")]
    [InlineData("a: b\0c\n", "\0", "U+0000")]
    [InlineData("a:\n  - : x\n", "- : x", "cannot be read as YAML")]
    [InlineData("a: [1, 2\n", "[", "cannot be read as YAML")]
    [InlineData("a: 'open\n", "'open", "cannot be read as YAML")]
    public void What_no_plain_file_needs_is_refused_at_its_place(string text, string at, string words)
    {
        FileRead<YamlDocument> read = Read(text);
        Assert.Contains(read.Problems, problem => problem.Message.Contains(words, StringComparison.Ordinal));
        if (words.StartsWith("cannot", StringComparison.Ordinal))
        {
            Assert.All(read.Problems, problem => Assert.InRange(problem.Line, 1, 3));
            return;
        }

        FileProblem problem = read.Problems.First(problem => problem.Message.Contains(words, StringComparison.Ordinal));
        Assert.Equal(Expect.PlaceOf(text, at), (problem.Line, problem.Column));
    }

    [Fact]
    public void A_mapping_that_contains_itself_as_a_key_is_refused_and_ends_nothing() =>
        Assert.NotEmpty(Read("&x {*x : 1, a: [*x]}\n").Problems);

    [Theory]
    [InlineData("")]
    [InlineData("# only a remark\n")]
    [InlineData("\n\n")]
    public void An_empty_file_is_told(string text) => Assert.Equal(StorageTexts.Empty, Assert.Single(Read(text).Problems).Message);

    [Fact]
    public void Sixty_levels_are_read_and_a_hundred_thousand_are_refused_without_a_crash()
    {
        Assert.True(Read(Nested(59)).IsGood);
        Assert.Equal(StorageTexts.TooDeep, Assert.Single(Read(Nested(61)).Problems).Message);
        Assert.Equal(StorageTexts.TooDeep, Assert.Single(Read(Nested(100_000)).Problems).Message);
    }

    [Fact]
    public void A_megabyte_is_read_and_one_byte_more_is_refused()
    {
        string most = "a: 1\n" + new string('#', (1024 * 1024) - 5);
        Assert.True(Read(most).IsGood);
        Assert.Equal(StorageTexts.TooLarge, Assert.Single(Read(most + "#").Problems).Message);
    }

    [Fact]
    public void Bytes_that_are_not_utf8_are_pointed_at()
    {
        byte[] latin1 = [.. "a: 1\nb: caf"u8, 0xE9, .. "\n"u8];
        FileProblem problem = Assert.Single(YamlTree.Read("f", latin1).Problems);
        Assert.Equal((2, 7, StorageTexts.NotUtf8), (problem.Line, problem.Column, problem.Message));
        Assert.Equal(StorageTexts.NotUtf8, Assert.Single(YamlTree.Read("f", Encoding.Unicode.GetPreamble()).Problems).Message);
    }

    [Fact]
    public void A_byte_order_mark_and_windows_line_ends_change_nothing()
    {
        FileRead<YamlDocument> read = YamlTree.Read("f", [0xEF, 0xBB, 0xBF, .. "a: 1\r\nb: two words\r\n"u8]);
        YamlText value = Assert.IsType<YamlText>(read.Value!.Top.Find("b")!.Value);
        Assert.Equal(("two words", new YamlPlace(2, 4, 9)), (value.Value, value.Place));
    }

    [Theory]
    [InlineData("a: plain text\n", "text", 6)]
    [InlineData("a: \"quoted text\"\n", "text", 7)]
    [InlineData("a: 'quoted text'\n", "text", 7)]
    public void A_stretch_of_a_value_is_found_in_its_line(string source, string part, int offset)
    {
        YamlText value = (YamlText)Read(source).Value!.Top.Find("a")!.Value;
        YamlPlace place = value.Stretch(offset, part.Length);
        Assert.Equal((Expect.PlaceOf(source, part).Column, part.Length), (place.Column, place.Length));
    }

    [Fact]
    public void A_stretch_of_a_value_that_is_written_otherwise_is_the_whole_value()
    {
        YamlText value = (YamlText)Read("a: \"t\\u0065xt\"\n").Value!.Top.Find("a")!.Value;
        Assert.Equal(value.Place, value.Stretch(2, 1));
    }

    [Fact]
    public void Lines_of_a_block_become_one_text()
    {
        YamlText value = (YamlText)Read("a: >\n  one\n  two\n").Value!.Top.Find("a")!.Value;
        Assert.Equal("one two", value.Value);
    }

    [Fact]
    public void Stray_brackets_that_upset_the_scanner_are_problems()
    {
        foreach (string text in new[] { "a: }\n", "}\n", "? \n", "a: {b: c?}\n}", "- ? }\n", "{?\n", "a: [}\n" })
        {
            Assert.True(Read(text) is { IsGood: true } or { Problems.Count: > 0 });
        }

        Assert.NotEmpty(Read("a: }\n").Problems);
    }

    private static FileRead<YamlDocument> Read(string text) => YamlTree.Read("file.yaml", Encoding.UTF8.GetBytes(text));

    private static string Nested(int depth) => "a: " + new string('[', depth) + new string(']', depth) + "\n";
}
