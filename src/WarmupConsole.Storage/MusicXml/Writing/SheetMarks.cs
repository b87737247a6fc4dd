using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Storage.MusicXml.Writing;

/// <summary>What stands at the notes of a part besides themselves.</summary>
/// <param name="Chords">Chord symbols; in the first part only.</param>
/// <param name="Loudness">Loudness words by the start of the note they stand at.</param>
/// <param name="Touch">The element of each note's articulation, or null.</param>
internal sealed record SheetMarks(IReadOnlyList<ChordSymbol> Chords, IReadOnlyDictionary<Beats, string> Loudness, string? Touch)
{
    internal static SheetMarks Of(ExerciseSheet sheet, IReadOnlyList<IReadOnlyList<SheetNote>> line, bool isFirstPart) => new(
        isFirstPart && sheet.First is { } rung ? ChordSymbol.Of(sheet.Exercise, rung) : [],
        LoudnessOf(sheet.Exercise.Dynamics, [.. line.SelectMany(bar => bar).Where(note => note.Pitch is not null && !note.IsTiedBack).Select(note => note.Start)]),
        sheet.Exercise.Articulation switch
        {
            Articulation.Staccato => "staccato",
            Articulation.Marcato => "strong-accent",
            _ => null,
        });

    /// <summary>A course is spread evenly from the first note to the last: each word stands at the note nearest to its place.</summary>
    private static Dictionary<Beats, string> LoudnessOf(IReadOnlyList<string> course, Beats[] starts)
    {
        Dictionary<Beats, string> words = [];
        for (int word = 0; word < course.Count && starts.Length > 0; word++)
        {
            long span = starts[^1].Ticks - starts[0].Ticks;
            long place = starts[0].Ticks + (course.Count == 1 ? 0 : span * word / (course.Count - 1));
            words.TryAdd(starts.MinBy(start => Math.Abs(start.Ticks - place)), course[word]);
        }

        return words;
    }
}
