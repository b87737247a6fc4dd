using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>A note that a part sings somewhere in a warm-up, in the words of the choir.</summary>
/// <param name="Warmup">The warm-up.</param>
/// <param name="Step">Index of the step.</param>
/// <param name="Part">The part.</param>
/// <param name="Tonic">Of the key it is in.</param>
/// <param name="Pitch">What it sings.</param>
internal readonly record struct SungAt(Warmup Warmup, int Step, Part Part, Pitch Tonic, Pitch Pitch)
{
    internal Exercise Exercise => Warmup.Steps[Step].Exercise;

    internal string Note => Notes.Write(Pitch);

    internal string Key => Notes.WriteName(Tonic);

    internal string Extreme => Part.Range.Extreme.In(Notes);

    internal string ComfortableTop => Notes.Write(Part.Range.Comfortable.High);

    private NoteNaming Notes => Warmup.Choir.Notes;
}
