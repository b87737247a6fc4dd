using System.IO.Compression;
using System.Text;
using WarmupConsole.Storage.MusicXml;
using WarmupConsole.Tests.Music.Repertoire;

namespace WarmupConsole.Tests.Storage.MusicXml;

/// <summary>Scores that are broken, too large or ill-meant: a sentence with a place, the usable rest, nothing fetched.</summary>
public sealed class HostileScoreTests
{
    private const string Note = "<note><pitch><step>C</step><octave>4</octave></pitch><duration>4</duration></note>";
    private const string Attributes = "<attributes><divisions>1</divisions><time><beats>4</beats><beat-type>4</beat-type></time></attributes>";

    [Fact]
    public void A_score_that_unpacks_to_more_than_the_limit_is_not_read()
    {
        byte[] bomb = Zip(("META-INF/container.xml", Container("score.xml")), ("score.xml", new string(' ', 40_000_000)));
        Assert.True(bomb.Length < 1_000_000);
        Refused(bomb, "larger than 32 MB once unpacked");
    }

    [Fact]
    public void A_list_of_contents_that_is_a_bomb_itself_is_not_read() =>
        Refused(Zip(("META-INF/container.xml", new string(' ', 1_000_000)), ("score.xml", Whole(Bar(1, Note)))), "holds no score");

    [Fact]
    public void A_container_of_too_many_files_is_not_read() =>
        Refused(Zip([.. Enumerable.Range(0, 1001).Select(i => ($"f{i}", ""))]), "more than 1000 files");

    [Theory]
    [InlineData("../score.xml")]
    [InlineData("a/../../score.xml")]
    [InlineData("/etc/passwd")]
    [InlineData("C:\\score.xml")]
    [InlineData("..\\score.xml")]
    [InlineData("file:///etc/passwd")]
    public void A_container_that_points_outside_is_refused(string path) =>
        Refused(Zip(("META-INF/container.xml", Container(path)), (path, Whole(Bar(1, Note)))), "lies outside of it");

    [Fact]
    public void A_container_that_names_a_missing_file_is_refused() => Refused(Zip(("META-INF/container.xml", Container("other.xml"))), "there is no such file in it");

    [Fact]
    public void Entities_are_never_expanded_nor_fetched()
    {
        string laughs = "<!DOCTYPE a [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\"><!ENTITY c SYSTEM \"file:///etc/passwd\">]>";
        ScoreFile read = Read(laughs + Whole(Bar(1, Note), name: "&b;"));
        Assert.Equal("\uFFFDb;", read.Score!.Parts[0].Name);
        Assert.Contains(read.Problems, problem => problem.Message.Contains("never expanded", StringComparison.Ordinal));

        ScoreFile outside = Read(laughs + Whole(Bar(1, Note), name: "&c;"));
        Assert.Contains(outside.Problems, problem => problem.Message.Contains("never fetched", StringComparison.Ordinal) && problem.Line > 0);
        Assert.False(outside.IsWhole);
    }

    [Fact]
    public void A_truncated_score_keeps_what_stands_before_and_says_where_it_ends()
    {
        string text = Whole(Bar(1, Attributes + Note) + "\n" + Bar(2, Note) + "\n" + Bar(3, Note));
        ScoreFile read = Read(text[..text.IndexOf("number=\"3\"", StringComparison.Ordinal)]);
        Assert.Equal(2, read.Score!.Parts[0].Notes.Count);
        Assert.False(read.IsWhole);
        Assert.Contains(read.Problems, problem => problem.Line == 3 && problem.Message.Contains("read up to here", StringComparison.Ordinal));
    }

    [Fact]
    public void Encodings_are_read_or_told()
    {
        string text = Whole(Bar(1, Note), name: "Ténor");
        Assert.Equal("Ténor", MusicXmlFile.Parse("f.xml", [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(text)]).Score!.Parts[0].Name);
        Assert.Equal("Ténor", MusicXmlFile.Parse("f.xml", [.. Encoding.BigEndianUnicode.GetPreamble(), .. Encoding.BigEndianUnicode.GetBytes(text)]).Score!.Parts[0].Name);
        Assert.Equal("Ténor", MusicXmlFile.Parse("f.xml", Encoding.Latin1.GetBytes("<?xml version=\"1.0\" encoding=\"ISO-8859-1\"?>" + text)).Score!.Parts[0].Name);

        ScoreFile wrong = MusicXmlFile.Parse("f.xml", Encoding.Latin1.GetBytes("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + text));
        Assert.Equal("T\uFFFDnor", wrong.Score!.Parts[0].Name);
        Assert.Contains(wrong.Problems, problem => problem.Line == 2 && problem.Message.Contains("not UTF-8", StringComparison.Ordinal));
        Assert.Null(MusicXmlFile.Parse("f.xml", Encoding.UTF32.GetBytes("\uFEFF" + text)).Score);
        Assert.NotNull(MusicXmlFile.Parse("f.xml", Encoding.UTF8.GetBytes("<?xml version=\"1.0\" encoding=\"KOI8-R\"?>" + text)).Score);
    }

    [Fact]
    public void A_score_without_parts_says_so()
    {
        ScoreFile read = Read("<score-partwise><part-list/></score-partwise>");
        Assert.Null(read.Score);
        Assert.Contains("no part that could be read", Assert.Single(read.Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Ten_thousand_bars_are_read_and_what_goes_beyond_is_left_out_and_told()
    {
        ScoreFile read = Read(Whole(string.Concat(Enumerable.Range(1, 10_001).Select(bar => Bar(bar, bar == 1 ? Attributes + Note : Note)))));
        Assert.Equal(10_000, read.Score!.Bars.Count);
        Assert.Contains("Voice has more than 10000 bars", Assert.Single(read.Problems).Message, StringComparison.Ordinal);
        Assert.False(read.IsWhole);
    }

    [Fact]
    public void Two_hundred_parts_are_read_and_the_next_are_left_out_and_told()
    {
        string parts = string.Concat(Enumerable.Range(0, 203).Select(part => $"<part id=\"P{part}\">{Bar(1, Note)}</part>"));
        ScoreFile read = Read($"<score-partwise>{parts}</score-partwise>");
        Assert.Equal(200, read.Score!.Parts.Count);
        Assert.Contains("more than 200 parts", Assert.Single(read.Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Microtones_are_rounded_and_told_once_for_each_part()
    {
        string quarter = Note.Replace("<step>C</step>", "<step>C</step><alter>0.75</alter>", StringComparison.Ordinal);
        ScoreFile read = Read(Whole(Bar(7, Attributes + quarter) + Bar(8, quarter)));
        Assert.All(read.Score!.Parts[0].Notes, note => Assert.Equal(61, note.Midi));
        Assert.Contains("Voice, bar 7: microtones", Assert.Single(read.Problems).Message, StringComparison.Ordinal);
        Assert.True(read.IsWhole);
    }

    [Fact]
    public void Bars_that_do_not_add_up_are_told_by_part_and_bar_and_once_when_all_parts_are_alike()
    {
        string bars = Bar(1, Attributes + Note) + Bar(2, Note + Note) + Bar(3, Note.Replace("<duration>4", "<duration>3", StringComparison.Ordinal)) + Bar(4, Note);
        ScoreFile read = Read($"<score-partwise><part-list><score-part id=\"P1\"><part-name>Alto</part-name></score-part></part-list><part id=\"P1\">{bars}</part><part id=\"P2\">{bars}</part></score-partwise>");
        Assert.Equal(["Alto, bar 2: the bar lasts 8", "Alto, bar 3: the bar lasts 3"], read.Problems.Select(problem => problem.Message[..28]));
        Assert.True(read.IsWhole);
    }

    [Fact]
    public void Short_bars_and_many_keys_and_voices_do_not_slow_the_reader_down()
    {
        string bar = Note.Replace("<duration>4", "<duration>1", StringComparison.Ordinal) + "<attributes><key><fifths>1</fifths></key></attributes>";
        ScoreFile read = Read(Whole(string.Concat(Enumerable.Range(1, 10_000).Select(number => Bar(number, (number == 1 ? Attributes : "") + bar + $"<note><pitch><step>D</step><octave>4</octave></pitch><duration>0</duration><voice>{number}</voice></note>")))));
        Assert.Equal(20_000, read.Score!.Parts[0].Notes.Count);
        Assert.InRange(read.Problems.Count, 1, 100);
        Scored.Looked(read.Score);
    }

    private static string Whole(string bars, string name = "Voice") =>
        $"<score-partwise><part-list><score-part id=\"P1\"><part-name>{name}</part-name></score-part></part-list><part id=\"P1\">{bars}</part></score-partwise>";

    private static string Bar(int number, string inside) => $"<measure number=\"{number}\">{inside}</measure>";

    private static string Container(string path) => $"<container><rootfiles><rootfile full-path=\"{path}\"/></rootfiles></container>";

    private static ScoreFile Read(string text) => MusicXmlFile.Parse("f.musicxml", Encoding.UTF8.GetBytes(text));

    private static void Refused(byte[] zip, string words)
    {
        ScoreFile read = MusicXmlFile.Parse("f.mxl", zip);
        Assert.Null(read.Score);
        Assert.Contains(words, Assert.Single(read.Problems).Message, StringComparison.Ordinal);
    }

    private static byte[] Zip(params (string Name, string Text)[] files)
    {
        using MemoryStream held = new();
        using (ZipArchive zip = new(held, ZipArchiveMode.Create))
        {
            foreach ((string name, string text) in files)
            {
                using Stream stream = zip.CreateEntry(name).Open();
                stream.Write(Encoding.UTF8.GetBytes(text));
            }
        }

        return held.ToArray();
    }
}
