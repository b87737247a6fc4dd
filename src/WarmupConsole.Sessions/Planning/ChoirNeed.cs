using System.Globalization;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Planning;

/// <summary>What the director wants worked on: a pitch, a region or a purpose; exactly one of them is set.</summary>
public sealed record ChoirNeed
{
    /// <summary>Id of a part or a group, or "everyone".</summary>
    public required string Who { get; init; }

    /// <summary>A sounding pitch, or null.</summary>
    public Pitch? Pitch { get; init; }

    /// <summary>A range of sounding pitches, or null.</summary>
    public PitchRange? Region { get; init; }

    /// <summary>What exercises should train, or null.</summary>
    public Purpose? Purpose { get; init; }

    /// <summary>Id of the kind of mark it comes from, or empty; where that means too much effort, it is spared and not trained.</summary>
    public string Kind { get; init; } = "";

    /// <summary>The piece it comes from, or empty.</summary>
    public string Piece { get; init; } = "";

    /// <summary>The bars of it, as text, or empty.</summary>
    public string Bars { get; init; } = "";

    /// <summary>The last day on which it matters, or null.</summary>
    public DateOnly? Until { get; init; }

    /// <summary>The day on which it was done, or null.</summary>
    public DateOnly? Done { get; init; }

    /// <summary>True when it still matters on a day.</summary>
    public bool IsOpenOn(DateOnly day) => Done is null && (Until is null || day <= Until);

    /// <summary>"soprano: F♯5, for Harbour hymn, bars 12-15, until 22 May 2027", with notes named as a choir does.</summary>
    public string WordsIn(NoteNaming notes)
    {
        string what = (Pitch is { } pitch ? notes.Write(pitch) : null) ?? Region?.In(notes) ?? (Purpose is { } purpose ? PurposeData.Words(purpose) : "");
        string where = (Piece.Length, Bars.Length) switch
        {
            (0, 0) => "",
            (0, _) => $", bars {Bars}",
            (_, 0) => $", for {Piece}",
            _ => $", for {Piece}, bars {Bars}",
        };
        return $"{Who}: {(Kind.Length == 0 ? "" : $"{Kind}, ")}{what}{where}{(Until is { } day ? string.Create(CultureInfo.InvariantCulture, $", until {day:d MMMM yyyy}") : "")}";
    }

    /// <summary>The parts it concerns, in the order of the choir.</summary>
    public IEnumerable<Part> PartsOf(IEnumerable<Part> parts) =>
        parts.Where(part => Who == LadderSpec.Everyone || part.Id == Who || part.Groups.Contains(Who));
}
