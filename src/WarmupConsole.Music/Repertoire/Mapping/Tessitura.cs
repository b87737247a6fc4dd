using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Repertoire.Mapping;

/// <summary>Where a line lies, its notes weighed by how long they sound.</summary>
public sealed class Tessitura
{
    /// <summary>How far the clef of another voice outweighs the pitches, in semitones.</summary>
    private const double OtherClef = 6;
    private const double OfMiddle = 0.25;
    private const int MiddleC = 60;

    private readonly (Pitch Pitch, long Ticks)[] notes;
    private readonly long whole;

    private Tessitura((Pitch Pitch, long Ticks)[] notes) => (this.notes, whole) = (notes, notes.Sum(note => note.Ticks));

    /// <summary>True when nothing sounds.</summary>
    public bool IsEmpty => notes.Length == 0;

    /// <summary>MIDI number in the middle; 0 when nothing sounds.</summary>
    public double Median => At(0.5)?.Midi ?? 0;

    /// <summary>Of notes without a time of their own only where there are no others.</summary>
    public static Tessitura Of(IEnumerable<PartNote> notes)
    {
        PartNote[] all = [.. notes];
        bool areGrace = Array.TrueForAll(all, note => note.Length.Ticks <= 0);
        return new([.. all.Select(note => (note.Pitch, Ticks: areGrace ? 1 : note.Length.Ticks)).Where(note => note.Ticks > 0).OrderBy(note => note.Pitch.Midi)]);
    }

    /// <summary>The pitch below which a share of the time lies, 0 to 1: 0.25 for the lower quartile. Null when nothing sounds.</summary>
    public Pitch? At(double share)
    {
        double wanted = share * whole;
        long passed = 0;
        foreach ((Pitch pitch, long ticks) in notes)
        {
            passed += ticks;
            if (passed >= wanted)
            {
                return pitch;
            }
        }

        return null;
    }

    /// <summary>The part that sings this with most ease; an octave clef speaks for a low voice, a bass clef as well.</summary>
    internal Part Nearest(IReadOnlyList<Part> parts, IReadOnlyList<string> clefs) => parts.MinBy(part => Distance(part.Range.Comfortable, clefs.FirstOrDefault("")))!;

    private double Distance(PitchRange comfortable, string clef)
    {
        double middle = (comfortable.Low.Midi + comfortable.High.Midi) / 2.0;
        bool isLowClef = clef is "F4" or "G2-8" or "C4" or "F3";
        double other = clef.Length > 0 && isLowClef != middle < MiddleC ? OtherClef : 0;
        return Outside(comfortable) + (OfMiddle * Math.Abs(Median - middle)) + other;
    }

    /// <summary>Semitones outside, on average over the time.</summary>
    private double Outside(PitchRange range) => whole == 0
        ? 0
        : notes.Sum(note => Math.Max(0, Math.Max(range.Low.Midi - note.Pitch.Midi, note.Pitch.Midi - range.High.Midi)) * (double)note.Ticks) / whole;
}
