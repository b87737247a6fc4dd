namespace WarmupConsole.Sessions.Events;

/// <summary>The first note of a rung was due.</summary>
/// <param name="Step">Index of the step, from 0.</param>
/// <param name="Rung">Index of the rung, from 0.</param>
/// <param name="Tonic">The tonic in ASCII, such as "Eb4".</param>
/// <param name="Midi">Its MIDI number.</param>
/// <param name="MilliBpm">Thousandths of a beat a minute.</param>
/// <param name="Sing">Ids of the parts that sing.</param>
/// <param name="Low">Lowest sounding MIDI number each of them was asked for, in the same order.</param>
/// <param name="High">Highest, in the same order.</param>
public sealed record RungStarted(
    int Step,
    int Rung,
    string Tonic,
    int Midi,
    int MilliBpm,
    IReadOnlyList<string> Sing,
    IReadOnlyList<int> Low,
    IReadOnlyList<int> High) : SessionEvent;
