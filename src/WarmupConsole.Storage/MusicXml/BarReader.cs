using System.Collections.Frozen;
using System.Globalization;

namespace WarmupConsole.Storage.MusicXml;

/// <summary>Reads the bars of parts, one at a time, in whichever order the file has them.</summary>
internal sealed class BarReader
{
    private const double Unequal = 0.01;
    private static readonly FrozenDictionary<string, Action<BarReader>> Elements = new (string Name, Action<BarReader> Read)[]
    {
        ("note", reader => reader.notes.Read()),
        ("backup", reader => reader.Move(-1)),
        ("forward", reader => reader.Move(1)),
        ("attributes", reader => reader.attributes.Read()),
        ("direction", reader => reader.directions.Read()),
        ("sound", reader => reader.directions.Sound()),
        ("barline", reader => reader.Barline()),
    }.ToFrozenDictionary(row => row.Name, row => row.Read);

    private static readonly FrozenDictionary<string, Action<BarReader>> Durations = new (string Name, Action<BarReader> Read)[]
    {
        ("duration", reader => reader.duration = XmlCursor.Number(reader.Xml.Text()) ?? 0),
    }.ToFrozenDictionary(row => row.Name, row => row.Read);

    private static readonly FrozenDictionary<string, Action<BarReader>> Barlines = new (string Name, Action<BarReader> Read)[]
    {
        ("repeat", reader => reader.Repeat()),
        ("ending", reader => reader.Ending()),
    }.ToFrozenDictionary(row => row.Name, row => row.Read);

    private readonly NoteReader notes;
    private readonly AttributesReader attributes;
    private readonly DirectionReader directions;
    private readonly HashSet<string> shared = [];

    /// <summary>Bars whose length was told; what is wrong in all parts alike is told of the first.</summary>
    private readonly HashSet<(int Bar, double Quarters, double Nominal)> told = [];
    private double duration;
    private bool endingStops;

    internal BarReader(XmlCursor xml, ScoreProblems problems, BarTable bars)
    {
        (Xml, Problems, Bars) = (xml, problems, bars);
        (notes, attributes, directions) = (new(this), new(this), new(this));
    }

    internal XmlCursor Xml { get; }

    internal ScoreProblems Problems { get; }

    internal BarTable Bars { get; }

    /// <summary>The part whose bar is read now.</summary>
    internal PartState Part { get; private set; } = new("", "");

    internal string Language => notes.Language;

    /// <summary>Reads the bar at the cursor into a part.</summary>
    internal void Read(PartState part, string? number, bool isImplicit)
    {
        Part = part;
        int bar = part.BarNumbers.Count;
        (int, int) place = Xml.Place;
        part.BarNumbers.Add(Bars.Name(bar, number ?? (bar + 1).ToString(CultureInfo.InvariantCulture)));
        part.Clock.BeginBar();
        notes.BeginBar();
        endingStops = false;
        try
        {
            Xml.Children(Elements, this);
        }
        finally
        {
            Finish(bar, isImplicit, place);
        }
    }

    /// <summary>One text for all that are alike.</summary>
    internal string Shared(string text)
    {
        if (shared.TryGetValue(text, out string? known))
        {
            return known;
        }

        shared.Add(text);
        return text;
    }

    /// <summary>What is only known at the end of a part: its last bar may be short, and so may two halves of a bar.</summary>
    internal void Judge(PartState part)
    {
        for (int index = 0; index < part.ShortBars.Count; index++)
        {
            PartState.ShortBar bar = part.ShortBars[index];
            bool isHalf = IsOtherHalf(part, index - 1, bar) || IsOtherHalf(part, index + 1, bar);
            if (bar.Bar < part.BarNumbers.Count - 1 && !isHalf && told.Add((bar.Bar, bar.Quarters, bar.Nominal)))
            {
                Problems.Note((bar.Line, bar.Column), MusicXmlTexts.BarLength(MusicXmlTexts.At(part.Title, part.BarNumbers[bar.Bar]), bar.Quarters, bar.Nominal));
            }
        }
    }

    private static bool IsOtherHalf(PartState part, int index, PartState.ShortBar bar) =>
        index >= 0 && index < part.ShortBars.Count && part.ShortBars[index] is var other
        && Math.Abs(other.Bar - bar.Bar) == 1 && Math.Abs(other.Quarters + bar.Quarters - bar.Nominal) < Unequal;

    private void Finish(int bar, bool isImplicit, (int Line, int Column) place)
    {
        (double filled, double nominal) = (Part.Clock.FilledQuarters, Part.NominalQuarters);
        Bars.Fill(bar, Part.Clock.FilledTicks, (long)Math.Round(nominal * Music.Rhythm.Beats.TicksPerBeat));
        if (Part.Endings.Count > 0)
        {
            IReadOnlyList<int> endings = Part.Endings;
            Bars.Jump(bar, jumps => jumps with { Endings = endings });
        }

        Part.Endings = endingStops ? [] : Part.Endings;
        if (nominal > 0 && filled > nominal + Unequal && told.Add((bar, filled, nominal)))
        {
            Problems.Note(place, MusicXmlTexts.BarLength(Part.Place, filled, nominal));
        }
        else if (nominal > 0 && filled > 0 && filled < nominal - Unequal && !isImplicit && bar > 0)
        {
            Part.ShortBars.Add(new(bar, filled, nominal, place.Line, place.Column));
        }
    }

    private void Move(int direction)
    {
        (int, int) place = Xml.Place;
        duration = 0;
        Xml.Children(Durations, this);
        double quarters = duration / Part.Clock.Divisions;
        bool isUsable = quarters is >= 0 and <= MusicXmlLimits.LongestQuarters;
        if (!isUsable || !Part.Clock.Go(direction * duration))
        {
            Problems.Note(place, MusicXmlTexts.BeforeBar(Part.Place));
        }
    }

    private void Barline() => Xml.Children(Barlines, this);

    private void Repeat()
    {
        int times = Math.Clamp(XmlCursor.Whole(Xml.Attribute("times") ?? "") ?? 2, 2, 99);
        bool starts = Xml.Attribute("direction") == "forward";
        Bars.Jump(Part.Bar, jumps => starts ? jumps with { RepeatStarts = true } : jumps with { RepeatTimes = times });
    }

    private void Ending()
    {
        if (Xml.Attribute("type") == "start")
        {
            Part.Endings = [.. (Xml.Attribute("number") ?? "").Split(',', ' ').Select(number => XmlCursor.Whole(number.Trim().TrimEnd('.'))).OfType<int>().Where(number => number is > 0 and < 100)];
        }
        else
        {
            endingStops = true;
        }
    }
}
