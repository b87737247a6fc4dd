using System.Collections.Frozen;
using System.Globalization;
using WarmupConsole.Music.Repertoire;

namespace WarmupConsole.Storage.MusicXml;

/// <summary>Reads loudness, tempo and the leaps that directions give.</summary>
internal sealed class DirectionReader(BarReader bar)
{
    /// <summary>Quarter notes of a note value.</summary>
    private static readonly FrozenDictionary<string, double> Units = new Dictionary<string, double>
    {
        ["breve"] = 8,
        ["whole"] = 4,
        ["half"] = 2,
        ["quarter"] = 1,
        ["eighth"] = 0.5,
        ["16th"] = 0.25,
        ["32nd"] = 0.125,
    }.ToFrozenDictionary();

    private static readonly FrozenDictionary<string, Action<DirectionReader>> Elements = Table(
        ("direction-type", reader => reader.Xml.Children(Types!, reader)),
        ("sound", reader => reader.Sound()));

    private static readonly FrozenDictionary<string, Action<DirectionReader>> Types = Table(
        ("dynamics", reader => reader.Dynamics()),
        ("metronome", reader => reader.Metronome()));

    private static readonly FrozenDictionary<string, Action<DirectionReader>> MetronomeElements = Table(
        ("beat-unit", reader => reader.unit = Units.GetValueOrDefault(reader.Xml.Text())),
        ("beat-unit-dot", reader => reader.unit *= 1.5),
        ("per-minute", reader => reader.perMinute = Leading(reader.Xml.Text())));

    /// <summary>Loudness words by their order from soft to loud; accents such as sf leave it as it is.</summary>
    private static readonly FrozenDictionary<string, int> Loudness = new (string Word, int Order)[]
    {
        ("pppppp", 0), ("ppppp", 0), ("pppp", 0), ("ppp", 0), ("pp", 0), ("p", 1), ("fp", 1), ("sfp", 1), ("sfpp", 0), ("mp", 2),
        ("mf", 3), ("f", 4), ("pf", 4), ("ff", 5), ("fff", 5), ("ffff", 5), ("fffff", 5), ("ffffff", 5),
    }.ToFrozenDictionary(row => row.Word, row => row.Order);

    private double unit;
    private double perMinute;

    private XmlCursor Xml => bar.Xml;

    private int Bar => bar.Part.Bar;

    internal void Read() => Xml.Children(Elements, this);

    internal void Dynamics() => Xml.ChildNames(name =>
    {
        if (Loudness.TryGetValue(name, out int order))
        {
            bar.Part.Loudness = order;
        }
    });

    /// <summary>What a <c>sound</c> element says, in its direction or alone in the bar.</summary>
    internal void Sound()
    {
        if (XmlCursor.Number(Xml.Attribute("tempo") ?? "") is { } tempo)
        {
            bar.Bars.AddTempo(Bar, bar.Part.Clock.Ticks, tempo);
        }

        Leap("segno", (jumps, name) => jumps with { Segno = name });
        Leap("dalsegno", (jumps, name) => jumps with { DalSegno = name });
        Leap("coda", (jumps, name) => jumps with { Coda = name });
        Leap("tocoda", (jumps, name) => jumps with { ToCoda = name });
        Leap("dacapo", (jumps, _) => jumps with { DaCapo = true });
        Leap("fine", (jumps, _) => jumps with { Fine = true });
    }

    private static FrozenDictionary<string, Action<DirectionReader>> Table(params (string Name, Action<DirectionReader> Read)[] rows) =>
        rows.ToFrozenDictionary(row => row.Name, row => row.Read);

    /// <summary>The number at the beginning of "96", "c. 96" or "88-96"; 0 when there is none.</summary>
    private static double Leading(string text)
    {
        string digits = new([.. text.SkipWhile(c => !char.IsAsciiDigit(c)).TakeWhile(c => char.IsAsciiDigit(c) || c == '.')]);
        return double.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number) ? number : 0;
    }

    private void Metronome()
    {
        (unit, perMinute) = (0, 0);
        Xml.Children(MetronomeElements, this);
        bar.Bars.AddTempo(Bar, bar.Part.Clock.Ticks, unit * perMinute);
    }

    private void Leap(string attribute, Func<BarJumps, string, BarJumps> change)
    {
        if (Xml.Attribute(attribute) is { Length: > 0 and <= MusicXmlLimits.LongestText } name and not "no")
        {
            bar.Bars.Jump(Bar, jumps => change(jumps, name));
        }
    }
}
