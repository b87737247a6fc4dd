using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Sessions.Review;

/// <summary>Which pitches a logged rung asked of each part.</summary>
internal static class RungPitches
{
    private const int Octave = 12;

    internal static Dictionary<string, IReadOnlyList<Pitch>> Of(RungStarted rung, Pitch tonic, Exercise? exercise, Choir choir) =>
        rung.Sing.Index().ToDictionary(part => part.Item, part => OfPart((rung.Low[part.Index], rung.High[part.Index]), LinesOf(part.Item, exercise, choir), tonic));

    /// <summary>The part's own line, then the others: the choir may have been regrouped since.</summary>
    private static IEnumerable<(Pattern Pattern, Mode Mode)> LinesOf(string id, Exercise? exercise, Choir choir)
    {
        Pattern? own = choir.Parts.FirstOrDefault(part => part.Id == id) is { } part ? exercise?.PatternFor(part) : null;
        return (exercise?.Lines ?? []).OrderByDescending(line => line == own).Select(line => (line, exercise!.Mode));
    }

    /// <summary>The part's octave follows from its lowest note, so that the log explains itself without the choir.</summary>
    private static IReadOnlyList<Pitch> OfPart((int Low, int High) span, IEnumerable<(Pattern Pattern, Mode Mode)> lines, Pitch tonic)
    {
        Pitch[]? asWritten = lines.Select(line => Written(line.Pattern, line.Mode, tonic)).FirstOrDefault(pitches =>
            (span.Low - pitches[0].Midi) % Octave == 0 && span.High - span.Low == pitches[^1].Midi - pitches[0].Midi);
        return asWritten is not null
            ? [.. asWritten.Select(pitch => pitch.Octaves((span.Low - asWritten[0].Midi) / Octave))]
            : [.. new[] { span.Low, span.High }.Distinct().Select(midi => KeySpelling.TonicFor(midi, Mode.Major))];
    }

    private static Pitch[] Written(Pattern pattern, Mode mode, Pitch tonic) =>
    [
        .. pattern.Notes.Where(note => note.Degree is not null)
            .Select(note => tonic.Transpose(ModeData.IntervalOf(mode, note.Degree!.Value)))
            .DistinctBy(pitch => pitch.Midi).Order(),
    ];
}
