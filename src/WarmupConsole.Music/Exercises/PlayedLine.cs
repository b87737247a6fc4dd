using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Exercises;

/// <summary>
/// Makes a pattern of what was played on a piano. Lengths become quarters of a beat, as near as they can; a beat is the usual distance
/// between two notes, doubled or halved until it is a tempo of a warm-up. Of keys struck together the highest counts.
/// </summary>
/// <param name="Pattern">Without syllables.</param>
/// <param name="Tempo">At which it was played.</param>
public sealed record PlayedLine(Pattern Pattern, Tempo Tempo)
{
    private const int Semitones = 12;
    private const int SlowestBeatsPerMinute = 50;
    private const int QuickestBeatsPerMinute = 132;
    private const int PartsOfBeat = 4;
    private const int TicksPerPart = Beats.TicksPerBeat / PartsOfBeat;
    private const int RestParts = 2;

    private static readonly TimeSpan Together = TimeSpan.FromMilliseconds(40);

    /// <summary>The degree number of each semitone above the tonic; its alteration is against the scale of the mode (common practice: flats, but a raised fourth).</summary>
    private static readonly int[] Numbers = [1, 2, 2, 3, 3, 4, 4, 5, 6, 6, 7, 7];

    /// <summary>Reads what was played against a tonic.</summary>
    /// <param name="played">In any order; no more than <see cref="PatternText.MostNotes"/> / 2 of them are taken.</param>
    /// <param name="tonicMidi">MIDI number of the tonic, in the octave that counts as the line's own.</param>
    /// <param name="mode">The scale that the degrees refer to.</param>
    /// <exception cref="ArgumentException">Nothing was played.</exception>
    public static PlayedLine Of(IEnumerable<PlayedNote> played, int tonicMidi, Mode mode)
    {
        PlayedNote[] line = [.. OneAtATime(played).Take(PatternText.MostNotes / 2)];
        if (line.Length == 0)
        {
            throw new ArgumentException("Nothing was played.", nameof(played));
        }

        Tempo tempo = TempoOf(line);
        return new(new Pattern([.. line.Index().SelectMany(note => Notes(line, note.Index, tempo, DegreeOf(note.Item.Midi - tonicMidi, mode)))]), tempo);
    }

    /// <summary>The degree that sounds some semitones above the tonic (or, negative, below).</summary>
    public static Degree DegreeOf(int semitones, Mode mode)
    {
        int octave = (int)Math.Floor(semitones / (double)Semitones);
        int within = semitones - (octave * Semitones);
        int number = Numbers[within];
        return new(number, within - ModeData.Semitones(mode, number), octave);
    }

    private static List<PlayedNote> OneAtATime(IEnumerable<PlayedNote> played)
    {
        List<PlayedNote> line = [];
        foreach (PlayedNote note in played.OrderBy(note => note.Start))
        {
            if (line.Count == 0 || note.Start - line[^1].Start > Together)
            {
                line.Add(note);
            }
            else if (note.Midi > line[^1].Midi)
            {
                line[^1] = note with { Start = line[^1].Start };
            }
        }

        return line;
    }

    private static Tempo TempoOf(PlayedNote[] line)
    {
        double[] seconds = line.Length == 1
            ? [(line[0].End - line[0].Start).TotalSeconds]
            : [.. line.Zip(line.Skip(1), (from, to) => (to.Start - from.Start).TotalSeconds).Order()];
        double beatsPerMinute = 60 / Math.Max(seconds[seconds.Length / 2], 0.01);
        while (beatsPerMinute > QuickestBeatsPerMinute)
        {
            beatsPerMinute /= 2;
        }

        while (beatsPerMinute < SlowestBeatsPerMinute)
        {
            beatsPerMinute *= 2;
        }

        return Tempo.FromBeatsPerMinute((int)Math.Round(beatsPerMinute));
    }

    /// <summary>One note up to the next one, and a rest where the key was up for half a beat or more.</summary>
    private static IEnumerable<PatternNote> Notes(PlayedNote[] line, int index, Tempo tempo, Degree degree)
    {
        int sounded = Parts(line[index].End - line[index].Start, tempo);
        int whole = index == line.Length - 1 ? sounded : Parts(line[index + 1].Start - line[index].Start, tempo);
        int length = whole - sounded >= RestParts ? sounded : whole;
        yield return new(degree, new Beats(length * TicksPerPart), null);
        if (length < whole)
        {
            yield return new(null, new Beats((whole - length) * TicksPerPart), null);
        }
    }

    /// <summary>In quarters of a beat, one at least and no more than a note may last.</summary>
    private static int Parts(TimeSpan time, Tempo tempo) =>
        Math.Clamp((int)Math.Round(time.TotalMinutes * tempo.BeatsPerMinute * PartsOfBeat), 1, BeatsText.MostBeats * PartsOfBeat);
}
