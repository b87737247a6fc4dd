using System.Collections.Frozen;

namespace WarmupConsole.Storage.MusicXml;

/// <summary>Reads what holds from here on in a part: divisions, key, time, clef, transposition.</summary>
internal sealed class AttributesReader(BarReader bar)
{
    private const int MostFifths = 7;
    private const int FarthestSemitones = 60;
    private static readonly FrozenDictionary<string, Action<AttributesReader>> Elements = Table(
        ("divisions", reader => reader.Divisions()),
        ("key", reader => reader.Key()),
        ("time", reader => reader.Time()),
        ("clef", reader => reader.Clef()),
        ("transpose", reader => reader.Transpose()));

    private static readonly FrozenDictionary<string, Action<AttributesReader>> KeyElements = Table(
        ("fifths", reader => reader.fifths = XmlCursor.Whole(reader.Xml.Text())),
        ("mode", reader => reader.isMinor = reader.Xml.Text() is "minor" or "aeolian"));

    private static readonly FrozenDictionary<string, Action<AttributesReader>> TimeElements = Table(
        ("beats", reader => reader.beats = Sum(reader.Xml.Text())),
        ("beat-type", reader => reader.AddBeats(XmlCursor.Number(reader.Xml.Text()))));

    private static readonly FrozenDictionary<string, Action<AttributesReader>> ClefElements = Table(
        ("sign", reader => reader.clef = reader.Xml.Text()),
        ("line", reader => reader.clef += reader.Xml.Text()),
        ("clef-octave-change", reader => reader.clef += Octaves(XmlCursor.Whole(reader.Xml.Text()))));

    private static readonly FrozenDictionary<string, Action<AttributesReader>> TransposeElements = Table(
        ("chromatic", reader => reader.chromatic = reader.Semitones(FarthestSemitones)),
        ("octave-change", reader => reader.octaves = reader.Semitones(FarthestSemitones / 12)));

    private int? fifths;
    private bool isMinor;
    private double beats;
    private double quarters;
    private string clef = "";
    private int chromatic;
    private int octaves;

    private XmlCursor Xml => bar.Xml;

    private PartState Part => bar.Part;

    internal void Read()
    {
        fifths = null;
        Xml.Children(Elements, this);
        if (fifths is { } signs && Math.Abs(signs) <= MostFifths)
        {
            if (Part.Keys is [.., var last] && last.Bar == Part.Bar)
            {
                Part.Keys.RemoveAt(Part.Keys.Count - 1);
            }

            Part.Keys.Add(new(Part.Bar, Part.TranspositionOf(1).SoundingFifths(signs), isMinor));
        }
    }

    private static FrozenDictionary<string, Action<AttributesReader>> Table(params (string Name, Action<AttributesReader> Read)[] rows) =>
        rows.ToFrozenDictionary(row => row.Name, row => row.Read);

    private static double Sum(string text) => text.Split('+').Sum(beats => XmlCursor.Number(beats) ?? 0);

    private static string Octaves(int? octaves) => octaves switch
    {
        null or 0 => "",
        < 0 => "-8",
        _ => "+8",
    };

    private void Divisions()
    {
        string text = Xml.Text();
        if (XmlCursor.Number(text) is { } divisions and > 0 and <= 1_000_000)
        {
            Part.Clock.Divisions = divisions;
        }
        else
        {
            bar.Problems.Loss(Xml.Place, MusicXmlTexts.NoNumber(Part.Place, "number of divisions", text));
        }
    }

    /// <summary>The key of the first staff stands for the part.</summary>
    private void Key()
    {
        if (Xml.Attribute("number") is null or "1")
        {
            isMinor = false;
            Xml.Children(KeyElements, this);
        }
    }

    private void Time()
    {
        (beats, quarters) = (0, 0);
        Xml.Children(TimeElements, this);
        Part.NominalQuarters = quarters is > 0 and <= MusicXmlLimits.LongestQuarters ? quarters : 0;
    }

    private void AddBeats(double? beatType) => quarters += beatType > 0 ? beats * 4 / beatType.Value : 0;

    private void Clef()
    {
        int staff = XmlCursor.Whole(Xml.Attribute("number") ?? "") ?? 1;
        clef = "";
        Xml.Children(ClefElements, this);
        Part.AddClef(staff, clef);
    }

    private void Transpose()
    {
        int? staff = XmlCursor.Whole(Xml.Attribute("number") ?? "");
        (chromatic, octaves) = (0, 0);
        Xml.Children(TransposeElements, this);
        Part.Transpose(staff, new(chromatic, octaves));
    }

    /// <summary>Semitones may be written with decimals; they are rounded.</summary>
    private int Semitones(int farthest)
    {
        string text = Xml.Text();
        if (XmlCursor.Number(text) is { } number && Math.Abs(number) <= farthest)
        {
            return (int)Math.Round(number);
        }

        bar.Problems.Loss(Xml.Place, MusicXmlTexts.NoNumber(Part.Place, "transposition", text));
        return 0;
    }
}
