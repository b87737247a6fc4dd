using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Sounding;

/// <summary>
/// What the piano plays before a rung (common practice): the tonic chord, with or without a chord that leads to it. It always ends on the
/// tonic. The note the singers start on lies on top of it, where the highest of them sing it, and an octave below for the others; the
/// top is a little louder. It is as loud as the exercise begins, so that nobody answers a loud chord with a soft line.
/// </summary>
public static class CueChords
{
    private const int BassFloor = 36;
    private const int Octave = 12;

    /// <summary>The top lies from middle C to the G above the octave; what is sung outside is given in the nearest octave.</summary>
    private const int TopFloor = 60;
    private const int TopCeiling = 79;

    /// <summary>The top stands out by so much above the loudness of the exercise, the chord lies under it by so much; in velocity.</summary>
    private const int TopAccent = 2;
    private const int ChordSoftening = 10;

    private static readonly int[] TonicDegrees = [1, 3, 5];

    /// <summary>Half a breath shorter than this gives no key to sing in alone.</summary>
    private static readonly Beats LeastForTonic = Beats.FromBeats(1);

    /// <summary>The tonic chord of a rung, from beat 0 for a length.</summary>
    public static IReadOnlyList<ScoreNote> Tonic(Rung rung, Exercise exercise, Beats length) =>
        Notes(TonicChord(rung, exercise), new(Beats.Zero, length, Loudness(exercise)));

    /// <summary>As usual: the dominant seventh leads.</summary>
    public static IReadOnlyList<ScoreNote> ToNextKey(Rung from, Rung to, Exercise exercise, Beats breath) =>
        ToNextKey((from, to), exercise, breath, PianoPart.Usual);

    /// <summary>
    /// Within the breath between two rungs: half of it the chord that leads, half the tonic of the next key. The tonic fills it when the
    /// key stays, and when the choir is left alone and half a breath is too short to take the key from.
    /// </summary>
    public static IReadOnlyList<ScoreNote> ToNextKey((Rung From, Rung To) keys, Exercise exercise, Beats breath, PianoPart piano)
    {
        Beats half = new(breath.Ticks / 2);
        bool stays = keys.From.Tonic.Midi == keys.To.Tonic.Midi;
        if (stays || piano.Between == BetweenKeys.Tonic || (piano.IsUnaccompanied && half < LeastForTonic))
        {
            return Tonic(keys.To, exercise, breath);
        }

        Chord tonic = TonicChord(keys.To, exercise);
        Chord leading = piano.Between == BetweenKeys.Chromatic
            ? tonic.Moved(keys.From.Tonic.Midi - keys.To.Tonic.Midi)
            : DominantSeventh(keys.To, tonic.Upper[^1]);
        int loudness = Loudness(exercise);
        return [.. Notes(leading, new(Beats.Zero, half, loudness)), .. Notes(tonic, new(half, breath - half, loudness))];
    }

    private static Chord TonicChord(Rung rung, Exercise exercise)
    {
        int tonic = rung.Tonic.Midi;
        int top = Top(rung, exercise);
        IEnumerable<int> tones = TonicDegrees
            .Select(number => tonic + ModeData.Semitones(rung.Mode, number))
            .Select(tone => Keyboard.AtOrBelow(tone, top));
        return Chord.Over(tonic, [.. tones, top - Octave, top]);
    }

    /// <summary>Close under the top of the tonic chord that follows, so that the hands hardly move.</summary>
    private static Chord DominantSeventh(Rung to, int top)
    {
        IReadOnlyList<Pitch> chord = Key.Of(to.Tonic, to.Mode).DominantSeventh(to.Tonic.Octave);
        return Chord.Over(chord[0].Midi, [.. chord.Skip(1).Select(tone => Keyboard.AtOrBelow(tone.Midi, top + 2))]);
    }

    /// <summary>The note the pattern starts on, as high as it is sung.</summary>
    private static int Top(Rung rung, Exercise exercise)
    {
        Degree first = exercise.Pattern?.Notes.FirstOrDefault(note => note.Degree is not null)?.Degree ?? Degree.Tonic;
        int octaves = rung.Parts.Where(part => part.Sings).Select(part => part.Octaves).DefaultIfEmpty(0).Max();
        int sung = rung.Tonic.Midi + (Octave * octaves) + ModeData.IntervalOf(rung.Mode, first).Semitones;
        return sung < TopFloor ? Keyboard.AtOrAbove(sung, TopFloor) : sung > TopCeiling ? Keyboard.AtOrBelow(sung, TopCeiling) : sung;
    }

    private static int Loudness(Exercise exercise) => DynamicsData.Velocity(exercise.Dynamics[0]);

    private static List<ScoreNote> Notes(Chord chord, Stroke stroke)
    {
        int top = chord.Upper[^1];
        return [.. chord.Left.Concat(chord.Upper).Distinct().Select(midi => new ScoreNote(midi, stroke.Start, stroke.Length, stroke.Velocity + (midi == top ? TopAccent : -ChordSoftening)))];
    }

    /// <summary>Both hands, each from low to high.</summary>
    private sealed record Chord(int[] Left, int[] Upper)
    {
        /// <summary>The bass low down, in octaves where there is room for it below the right hand.</summary>
        internal static Chord Over(int bass, int[] upper)
        {
            int low = Keyboard.AtOrAbove(bass, BassFloor);
            int[] right = [.. upper.Distinct().Order()];
            return new(low + Octave < right[0] ? [low, low + Octave] : [low], right);
        }

        internal Chord Moved(int semitones) => new([.. Left.Select(midi => midi + semitones)], [.. Upper.Select(midi => midi + semitones)]);
    }

    private readonly record struct Stroke(Beats Start, Beats Length, int Velocity);
}
