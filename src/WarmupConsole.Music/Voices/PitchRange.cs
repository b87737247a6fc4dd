using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Music.Voices;

/// <summary>From a lowest to a highest pitch, both included.</summary>
public readonly record struct PitchRange
{
    /// <exception cref="ArgumentException">Low lies above high.</exception>
    public PitchRange(Pitch low, Pitch high)
    {
        if (low.Midi > high.Midi)
        {
            throw new ArgumentException($"The lowest note {low} lies above the highest note {high}.");
        }

        (Low, High) = (low, high);
    }

    /// <summary>The lowest pitch.</summary>
    public Pitch Low { get; }

    /// <summary>The highest pitch.</summary>
    public Pitch High { get; }

    /// <summary>True when a MIDI number lies within, ends included.</summary>
    public bool Contains(int midi) => Low.Midi <= midi && midi <= High.Midi;

    /// <summary>True when the whole other range lies within.</summary>
    public bool Contains(PitchRange other) => Contains(other.Low.Midi) && Contains(other.High.Midi);

    /// <summary>Semitones from the lowest to the highest.</summary>
    public int Semitones => High.Midi - Low.Midi;

    /// <summary>For showing, in a choir's own note names: "C4–G5", "c1–g2".</summary>
    public string In(NoteNaming notes) => $"{notes.Write(Low)}–{notes.Write(High)}";

    public override string ToString() => $"{Low}–{High}";
}
