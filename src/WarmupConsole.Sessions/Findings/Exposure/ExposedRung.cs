namespace WarmupConsole.Sessions.Findings.Exposure;

/// <summary>One rung that was begun, with what it asked of each part that sang. A repetition is a rung of its own.</summary>
/// <param name="Step">Index of its step, from 0.</param>
/// <param name="Rung">Index in its ladder, from 0.</param>
/// <param name="Tonic">MIDI number of the tonic as written for parts with placement 0.</param>
/// <param name="MilliBpm">Thousandths of a beat a minute.</param>
/// <param name="Minute">Minutes of the warm-up before it, breaks between interruption and resumption left out.</param>
/// <param name="Epoch">Moments can be compared only within one.</param>
/// <param name="Start">Nanoseconds of its first note.</param>
/// <param name="Lines">One for each part that sang.</param>
public readonly record struct ExposedRung(int Step, int Rung, int Tonic, int MilliBpm, double Minute, int Epoch, long Start, IReadOnlyList<ExposedLine> Lines)
{
    /// <summary>True when it was sung to its last beat; a rung that was broken off counts only if a mark means it.</summary>
    public bool IsWhole { get; init; }

    /// <summary>The line of a part, or null when it rested.</summary>
    public ExposedLine? LineOf(string part)
    {
        for (int i = 0; i < Lines.Count; i++)
        {
            if (Lines[i].Part == part)
            {
                return Lines[i];
            }
        }

        return null;
    }
}
