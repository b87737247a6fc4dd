using System.Text;
using System.Xml;
using System.Xml.Linq;
using WarmupConsole.Music.Repertoire;
using WarmupConsole.Storage.MusicXml;

namespace WarmupConsole.Tests.Storage.MusicXml;

/// <summary>A score says the same whether its bars stand in its parts or its parts in its bars; the scores are turned over here.</summary>
public sealed class TimewiseTests
{
    public static TheoryData<string> Files =>
        [.. ScoreTable.Rows("ranges.csv").Where(row => row["error"].Length == 0).Select(row => row["file"]).Distinct().Where(file => !file.EndsWith(".mxl", StringComparison.Ordinal) && !file.Contains("entity", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_score_in_bars_is_read_as_the_same_score_in_parts(string file)
    {
        Score partwise = ScoreTable.Read(file).Score!;
        ScoreFile read = MusicXmlFile.Parse("turned.musicxml", Encoding.UTF8.GetBytes(TurnedOver(Path.Combine(ScoreTable.Folder, file))));
        Assert.True(read.IsWhole, string.Join('\n', read.Problems));
        Score timewise = read.Score!;

        Assert.Equal((partwise.Title, partwise.Language), (timewise.Title, timewise.Language));
        Assert.Equal(partwise.Tempos, timewise.Tempos);
        Assert.Equal(partwise.Bars.Select(Bar), timewise.Bars.Select(Bar));
        Assert.Equal(PlayedOrder.Of(partwise.Bars), PlayedOrder.Of(timewise.Bars));
        Assert.Equal(partwise.Parts.Count, timewise.Parts.Count);
        Assert.All(partwise.Parts.Zip(timewise.Parts), pair =>
        {
            Assert.Equal((pair.First.Id, pair.First.Name, pair.First.CueNotes, pair.First.UnpitchedNotes), (pair.Second.Id, pair.Second.Name, pair.Second.CueNotes, pair.Second.UnpitchedNotes));
            Assert.Equal(pair.First.Notes, pair.Second.Notes);
            Assert.Equal(pair.First.BarNumbers, pair.Second.BarNumbers);
            Assert.Equal(pair.First.Keys, pair.Second.Keys);
            Assert.Equal(pair.First.Clefs, pair.Second.Clefs);
        });
    }

    private static (string, long, long) Bar(ScoreBar bar) => (bar.Number, bar.Start.Ticks, bar.Length.Ticks);

    /// <summary>The head as it is, then a bar after the other with what each part has in it.</summary>
    private static string TurnedOver(string path)
    {
        using XmlReader reader = XmlReader.Create(path, new() { DtdProcessing = DtdProcessing.Ignore });
        XElement root = XElement.Load(reader);
        XElement[] parts = [.. root.Elements("part")];
        int bars = parts.Max(part => part.Elements("measure").Count());
        IEnumerable<XElement> measures = Enumerable.Range(0, bars).Select(bar =>
        {
            (XElement Part, XElement Measure)[] there = [.. parts.Select(part => (part, part.Elements("measure").ElementAtOrDefault(bar)!)).Where(pair => pair.Item2 is not null)];
            return new XElement("measure", there[0].Measure.Attributes(), there.Select(pair => new XElement("part", pair.Part.Attributes(), pair.Measure.Nodes())));
        });
        return new XElement("score-timewise", root.Attributes(), root.Elements().Where(element => element.Name != "part"), measures).ToString();
    }
}
