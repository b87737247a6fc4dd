using System.Collections.Frozen;
using System.Xml;
using WarmupConsole.Music.Repertoire;

namespace WarmupConsole.Storage.MusicXml;

/// <summary>Reads a whole score, partwise or timewise. What stands before a fault is kept.</summary>
internal sealed class ScoreReader
{
    private static readonly FrozenDictionary<string, Action<ScoreReader>> Heads = Table(
        ("work", reader => reader.Xml.Children(WorkElements!, reader)),
        ("movement-title", reader => reader.title = OnOneLine(reader.Xml.Text())),
        ("defaults", reader => reader.Xml.Children(Defaults!, reader)),
        ("part-list", reader => reader.Xml.Children(PartList!, reader)));

    private static readonly FrozenDictionary<string, Action<ScoreReader>> Partwise = Table(
        [.. Heads.Select(row => (row.Key, row.Value)), ("part", reader => reader.Part())]);

    private static readonly FrozenDictionary<string, Action<ScoreReader>> Timewise = Table(
        [.. Heads.Select(row => (row.Key, row.Value)), ("measure", reader => reader.BarOfAll())]);

    private static readonly FrozenDictionary<string, Action<ScoreReader>> WorkElements = Table(
        ("work-title", reader => reader.work = OnOneLine(reader.Xml.Text())));

    private static readonly FrozenDictionary<string, Action<ScoreReader>> Defaults = Table(
        ("lyric-language", reader => reader.language = reader.Xml.Language));

    private static readonly FrozenDictionary<string, Action<ScoreReader>> PartList = Table(
        ("score-part", reader => reader.NamedPart()));

    private static readonly FrozenDictionary<string, Action<ScoreReader>> NamedParts = Table(
        ("part-name", reader => reader.name = OnOneLine(reader.Xml.Text())));

    private static readonly FrozenDictionary<string, Action<ScoreReader>> BarsOfPart = Table(
        ("measure", reader => reader.BarOfPart()));

    private static readonly FrozenDictionary<string, Action<ScoreReader>> PartsOfBar = Table(
        ("part", reader => reader.PartOfBar()));

    private readonly ScoreProblems problems;
    private readonly BarTable bars = new();
    private readonly BarReader barReader;
    private readonly Dictionary<string, string> names = [];
    private readonly List<PartState> parts = [];
    private readonly Dictionary<string, PartState> byId = [];
    private string title = "";
    private string work = "";
    private string language = "";
    private string name = "";
    private PartState? part;
    private (string? Number, bool IsImplicit) measure;
    private int notes;
    private bool toldOfParts;
    private bool toldOfNotes;

    private ScoreReader(XmlReader xml, ScoreProblems problems)
    {
        (Xml, this.problems) = (new(xml), problems);
        barReader = new(Xml, problems, bars);
    }

    private XmlCursor Xml { get; }

    /// <summary>The score in a text; null when nothing of it is usable, and then that is told.</summary>
    internal static Score? Read(string text, ScoreProblems problems)
    {
        using XmlReader xml = XmlReader.Create(new StringReader(text), XmlCursor.Settings());
        ScoreReader reader = new(xml, problems);
        bool isScore = reader.ReadAll();
        if (isScore && reader.parts.Count == 0 && problems.IsWhole)
        {
            problems.Loss((0, 0), MusicXmlTexts.NoParts);
        }

        return reader.parts.Count == 0 ? null : reader.Finish();
    }

    private static FrozenDictionary<string, Action<ScoreReader>> Table(params IEnumerable<(string Name, Action<ScoreReader> Read)> rows) =>
        rows.ToFrozenDictionary(row => row.Name, row => row.Read);

    private bool ReadAll()
    {
        try
        {
            return Xml.ToRoot() && ReadRoot();
        }
        catch (XmlException fault)
        {
            bool isOutside = fault.Message.StartsWith("Reference to undeclared entity", StringComparison.Ordinal);
            problems.Loss((fault.LineNumber, fault.LinePosition), isOutside ? MusicXmlTexts.ExternalEntity : MusicXmlTexts.BrokenXml(Reason(fault)));
            return true;
        }
    }

    private bool ReadRoot()
    {
        FrozenDictionary<string, Action<ScoreReader>>? table = Xml.Name switch
        {
            "score-partwise" => Partwise,
            "score-timewise" => Timewise,
            _ => null,
        };
        if (table is null)
        {
            problems.Loss(Xml.Place, MusicXmlTexts.NotMusicXml(Xml.Name));
            return false;
        }

        Xml.Children(table, this);
        return true;
    }

    private Score Finish()
    {
        foreach (PartState state in parts)
        {
            barReader.Judge(state);
        }

        return new()
        {
            Title = title.Length > 0 ? title : work,
            Parts = [.. parts.Select(state => state.ToPart())],
            Bars = bars.Bars(),
            Tempos = bars.Tempos(),
            Language = language.Length > 0 ? language : barReader.Language,
        };
    }

    /// <summary>The reader's sentence ends with the place, which is told before it.</summary>
    private static string Reason(XmlException fault)
    {
        int at = fault.Message.LastIndexOf(" Line ", StringComparison.Ordinal);
        return (at < 0 ? fault.Message : fault.Message[..at]).TrimEnd('.');
    }

    private static string OnOneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private void NamedPart()
    {
        string id = Xml.Attribute("id") ?? "";
        name = "";
        Xml.Children(NamedParts, this);
        names.TryAdd(id, name);
    }

    private void Part()
    {
        part = Begin(Xml.Attribute("id") ?? "");
        if (part is not null)
        {
            Xml.Children(BarsOfPart, this);
        }
    }

    private void BarOfPart() => Bar(part!, Xml.Attribute("number"), Xml.IsYes("implicit"));

    private void BarOfAll()
    {
        measure = (Xml.Attribute("number"), Xml.IsYes("implicit"));
        Xml.Children(PartsOfBar, this);
    }

    private void PartOfBar()
    {
        string id = Xml.Attribute("id") ?? "";
        if (byId.GetValueOrDefault(id) is { } known)
        {
            Bar(known, measure.Number, measure.IsImplicit);
        }
        else if (Begin(id) is { } begun)
        {
            byId[id] = begun;
            Bar(begun, measure.Number, measure.IsImplicit);
        }
    }

    private PartState? Begin(string id)
    {
        if (parts.Count < MusicXmlLimits.MostParts)
        {
            parts.Add(new(id, names.GetValueOrDefault(id, "")));
            return parts[^1];
        }

        if (!toldOfParts)
        {
            toldOfParts = true;
            problems.Loss(Xml.Place, MusicXmlTexts.ManyParts(MusicXmlLimits.MostParts));
        }

        return null;
    }

    private void Bar(PartState state, string? number, bool isImplicit)
    {
        if (state.BarNumbers.Count == MusicXmlLimits.MostBars)
        {
            TellOnce(state);
            return;
        }

        if (notes < MusicXmlLimits.MostNotes)
        {
            int before = state.Notes.Count;
            barReader.Read(state, number, isImplicit);
            notes += state.Notes.Count - before;
        }
        else if (!toldOfNotes)
        {
            toldOfNotes = true;
            problems.Loss(Xml.Place, MusicXmlTexts.ManyNotes);
        }
    }

    private void TellOnce(PartState state)
    {
        if (!state.ToldOfBars)
        {
            state.ToldOfBars = true;
            problems.Loss(Xml.Place, MusicXmlTexts.ManyBars(state.Title, MusicXmlLimits.MostBars));
        }
    }
}
