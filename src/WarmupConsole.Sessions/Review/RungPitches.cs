using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Sessions.Review;

/// <summary>Which pitches a logged rung asked of each part.</summary>
internal static class RungPitches
{
    private const int Octave = 12;

    internal static Dictionary<string, IReadOnlyList<Pitch>> Of(RungStarted rung, Pitch tonic, Exercise? exercise) =>
        rung.Sing.Index().ToDictionary(part => part.Item, part => OfPart(rung, part.Index, tonic, exercise));

    /// <summary>The part's octave follows from its lowest note, so that the log explains itself without the choir.</summary>
    private static IReadOnlyList<Pitch> OfPart(RungStarted rung, int part, Pitch tonic, Exercise? exercise)
    {
        (int low, int high) = (rung.Low[part], rung.High[part]);
        Pitch[] asWritten = exercise?.Pattern is { } pattern ? Written(pattern, exercise.Mode, tonic) : [];
        bool isKnown = asWritten.Length > 0 && (low - asWritten[0].Midi) % Octave == 0 && high - low == asWritten[^1].Midi - asWritten[0].Midi;
        return isKnown
            ? [.. asWritten.Select(pitch => pitch.Octaves((low - asWritten[0].Midi) / Octave))]
            : [.. new[] { low, high }.Distinct().Select(midi => KeySpelling.TonicFor(midi, Mode.Major))];
    }

    private static Pitch[] Written(Pattern pattern, Mode mode, Pitch tonic) =>
    [
        .. pattern.Notes.Where(note => note.Degree is not null)
            .Select(note => tonic.Transpose(ModeData.IntervalOf(mode, note.Degree!.Value)))
            .DistinctBy(pitch => pitch.Midi).Order(),
    ];
}
