using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Sounding;

/// <summary>
/// What the piano plays before a rung (common practice): the tonic chord, or the dominant seventh of the next key and its tonic.
/// Both hands, in the middle of the piano; the note the singers start on lies on top of the tonic chord and is a little louder. It is as
/// loud as the exercise begins, so that nobody answers a loud chord with a soft line.
/// </summary>
public static class CueChords
{
    private const int BassFloor = 36;
    private const int TopFloor = 62;

    /// <summary>The top stands out by so much above the loudness of the exercise, the chord lies under it by so much; in velocity.</summary>
    private const int TopAccent = 2;
    private const int ChordSoftening = 10;

    private static readonly int[] TonicDegrees = [1, 3, 5];

    /// <summary>The tonic chord of a rung, from beat 0 for a length.</summary>
    public static IReadOnlyList<ScoreNote> Tonic(Rung rung, Exercise exercise, Beats length) => TonicAt(rung, exercise, Beats.Zero, length);

    /// <summary>
    /// Within the breath between two rungs: half of it the dominant seventh of the next key, half its tonic. When the key stays,
    /// there is nowhere to lead and the tonic fills the breath.
    /// </summary>
    public static IReadOnlyList<ScoreNote> ToNextKey(Rung from, Rung to, Exercise exercise, Beats breath)
    {
        if (from.Tonic.Midi == to.Tonic.Midi)
        {
            return Tonic(to, exercise, breath);
        }

        Beats half = new(breath.Ticks / 2);
        return [.. DominantSeventh(to, exercise, half), .. TonicAt(to, exercise, half, breath - half)];
    }

    private static List<ScoreNote> TonicAt(Rung rung, Exercise exercise, Beats start, Beats length)
    {
        int tonic = rung.Tonic.Midi;
        int top = Top(rung, exercise);
        IEnumerable<int> tones = TonicDegrees
            .Select(number => tonic + ModeData.Semitones(rung.Mode, number))
            .Select(tone => Keyboard.AtOrBelow(tone, top));
        return Notes(tonic, [.. tones, top], new(start, length, Loudness(exercise)));
    }

    /// <summary>Close under the top of the tonic chord that follows, so that the hands hardly move.</summary>
    private static List<ScoreNote> DominantSeventh(Rung to, Exercise exercise, Beats length)
    {
        IReadOnlyList<Pitch> chord = Key.Of(to.Tonic, to.Mode).DominantSeventh(to.Tonic.Octave);
        int ceiling = Top(to, exercise) + 2;
        return Notes(chord[0].Midi, [.. chord.Skip(1).Select(tone => Keyboard.AtOrBelow(tone.Midi, ceiling))], new(Beats.Zero, length, Loudness(exercise)));
    }

    /// <summary>The note the pattern starts on, in the octave above middle C's D.</summary>
    private static int Top(Rung rung, Exercise exercise)
    {
        Degree first = exercise.Pattern?.Notes.FirstOrDefault(note => note.Degree is not null)?.Degree ?? Degree.Tonic;
        return Keyboard.AtOrAbove(rung.Tonic.Midi + ModeData.IntervalOf(rung.Mode, first).Semitones, TopFloor);
    }

    private static int Loudness(Exercise exercise) => DynamicsData.Velocity(exercise.Dynamics[0]);

    private static List<ScoreNote> Notes(int bass, IReadOnlyList<int> upper, Stroke stroke)
    {
        int low = Keyboard.AtOrAbove(bass, BassFloor);
        int top = upper.Max();
        int[] left = low + 12 < upper.Min() ? [low, low + 12] : [low];
        return [.. left.Concat(upper.Distinct().Order()).Select(midi => new ScoreNote(midi, stroke.Start, stroke.Length, stroke.Velocity + (midi == top ? TopAccent : -ChordSoftening)))];
    }

    private readonly record struct Stroke(Beats Start, Beats Length, int Velocity);
}
