using System.Collections.Frozen;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Repertoire;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Storage.MusicXml;

/// <summary>Reads notes and rests.</summary>
internal sealed class NoteReader(BarReader bar)
{
    private const int MostAlteration = 3;
    private const string Letters = "CDEFGAB";
    private static readonly FrozenDictionary<string, Action<NoteReader>> Elements = Table(
        ("grace", reader => reader.traits |= NoteTraits.Grace),
        ("chord", reader => reader.traits |= NoteTraits.Chord),
        ("cue", reader => reader.isCue = true),
        ("unpitched", reader => reader.isUnpitched = true),
        ("pitch", reader => reader.Xml.Children(PitchElements!, reader)),
        ("duration", reader => reader.duration = XmlCursor.Number(reader.Xml.Text()) ?? 0),
        ("voice", reader => reader.Voice(reader.Xml.Text())),
        ("staff", reader => reader.staff = XmlCursor.Whole(reader.Xml.Text()) ?? 1),
        ("tie", reader => reader.Tie(reader.Xml.Attribute("type"))),
        ("notations", reader => reader.Xml.Children(Notations!, reader)),
        ("lyric", reader => reader.lyric.Read()));

    private static readonly FrozenDictionary<string, Action<NoteReader>> PitchElements = Table(
        ("step", reader => reader.step = reader.Xml.Text()),
        ("alter", reader => reader.alter = XmlCursor.Number(reader.Xml.Text())),
        ("octave", reader => reader.octave = XmlCursor.Whole(reader.Xml.Text())));

    private static readonly FrozenDictionary<string, Action<NoteReader>> Notations = Table(
        ("dynamics", reader => reader.directions.Dynamics()),
        ("articulations", reader => reader.Xml.ChildNames(name => reader.traits |= name is "breath-mark" or "caesura" ? NoteTraits.BreathAfter : 0)));

    private readonly DirectionReader directions = new(bar);
    private readonly LyricReader lyric = new(bar.Xml);
    private string step = "";
    private double? alter;
    private int? octave;
    private double duration;
    private string voice = "1";
    private int staff;
    private NoteTraits traits;
    private bool isCue;
    private bool isUnpitched;

    /// <summary>The language that the words name, or empty.</summary>
    internal string Language => lyric.Language;

    private XmlCursor Xml => bar.Xml;

    private PartState Part => bar.Part;

    private bool IsGrace => (traits & NoteTraits.Grace) != 0;

    private bool IsChord => (traits & NoteTraits.Chord) != 0;

    /// <summary>A new bar: a note that names no voice is of the first.</summary>
    internal void BeginBar() => voice = "1";

    internal void Read()
    {
        (int, int) place = Xml.Place;
        Reset();
        Xml.Children(Elements, this);
        duration = duration >= 0 && duration / Part.Clock.Divisions <= MusicXmlLimits.LongestQuarters ? duration : 0;
        Keep(place);
        if (!IsChord && !IsGrace)
        {
            Part.Clock.Go(duration);
        }
    }

    private static FrozenDictionary<string, Action<NoteReader>> Table(params (string Name, Action<NoteReader> Read)[] rows) =>
        rows.ToFrozenDictionary(row => row.Name, row => row.Read);

    private void Reset()
    {
        (step, alter, octave, duration, staff, traits, isCue, isUnpitched) = ("", null, null, 0, 1, NoteTraits.None, false, false);
        lyric.Reset();
    }

    /// <summary>A chord member without a voice is of its chord's.</summary>
    private void Voice(string text) => voice = text.Length == 0 ? "1" : text == voice ? voice : bar.Shared(text);

    private void Tie(string? type) => traits |= type switch
    {
        "start" => NoteTraits.TieStart,
        "stop" => NoteTraits.TieStop,
        _ => 0,
    };

    private void Keep((int Line, int Column) place)
    {
        if (isCue)
        {
            Part.CueNotes++;
        }
        else if (isUnpitched)
        {
            Part.UnpitchedNotes++;
        }
        else if (step.Length > 0 || octave is not null)
        {
            KeepPitched(place);
        }
    }

    private void KeepPitched((int Line, int Column) place)
    {
        if (Written(place) is not { } written)
        {
            bar.Problems.Loss(place, MusicXmlTexts.NoPitch(Part.Place));
            return;
        }

        long start = IsChord && !IsGrace ? Part.Clock.LastTicks : Part.Clock.Ticks;
        long length = IsGrace ? 0 : Part.Clock.LengthOf(start, duration);
        Part.Notes.Add(new(
            Part.TranspositionOf(staff).Sounding(written),
            written.Midi,
            Part.Bar,
            new Beats(start),
            new Beats(length),
            staff,
            voice,
            traits,
            Part.Loudness,
            lyric.Syllable));
    }

    private Pitch? Written((int Line, int Column) place)
    {
        int letter = step.Length == 1 ? Letters.IndexOf(step[0], StringComparison.Ordinal) : -1;
        double wanted = alter ?? 0;
        if (letter < 0 || octave is not (>= 0 and <= 9) || Math.Abs(wanted) > MostAlteration)
        {
            return null;
        }

        int alteration = (int)Math.Round(wanted);
        if (alteration != wanted && !Part.ToldOfMicrotones)
        {
            Part.ToldOfMicrotones = true;
            bar.Problems.Note(place, MusicXmlTexts.Microtone(Part.Place));
        }

        return new((Step)letter, alteration, octave.Value);
    }
}
