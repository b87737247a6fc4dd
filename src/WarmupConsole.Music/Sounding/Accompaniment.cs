using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Sounding;

/// <summary>What the piano plays during a rung: the melody in every octave in which it is sung, and soft chords with it, as it is asked to.</summary>
public static class Accompaniment
{
    /// <summary>Chords lie under the melody: so much softer in velocity.</summary>
    private const int ChordSoftening = 16;

    /// <summary>As usual: melody and whole chords.</summary>
    public static IReadOnlyList<ScoreNote> For(Exercise exercise, Rung rung) => For(exercise, rung, PianoPart.Usual);

    /// <summary>
    /// From beat 0, in the order of the starts; nothing for exercises without a pattern. Always on the piano (MIDI 21–108), chords within
    /// the range of <see cref="GripBook"/>, and no key is struck while it still sounds: a chord tone ends where the melody takes it over.
    /// </summary>
    public static IReadOnlyList<ScoreNote> For(Exercise exercise, Rung rung, PianoPart piano)
    {
        if (exercise.Pattern is not Pattern pattern)
        {
            return [];
        }

        (Pattern Pattern, int[] Octaves)[] lines = [.. Lines(exercise, pattern, rung)];
        List<ScoreNote> melody = piano.PlaysMelody ? [.. lines.SelectMany(line => Melody(exercise, line, rung))] : [];
        melody = SharedKeys.Restruck(piano.Click == Click.EveryBeat ? melody.Concat(Clicks.On(pattern.Length)) : melody);
        IEnumerable<ScoreNote> chords = SharedKeys.Restruck(Chords(exercise, pattern, rung, piano.Style, lines))
            .Select(tone => UnderMelody(tone with { Velocity = Math.Max(1, VelocityAt(exercise, pattern, tone.Start) - ChordSoftening) }, melody))
            .Where(tone => tone.Length > Beats.Zero);
        return [.. melody.Concat(chords).OrderBy(note => note.Start)];
    }

    /// <summary>How the chords are laid under the hands, for the styles that have any.</summary>
    public static IReadOnlyList<VoicedChord> Voiced(Exercise exercise, Rung rung) =>
        exercise.Pattern is { } pattern ? Voiced(exercise, pattern, rung, [.. Lines(exercise, pattern, rung)]) : [];

    /// <summary>What those who sing do sing, and in which octaves; when all rest, the pattern as written.</summary>
    private static IEnumerable<(Pattern Pattern, int[] Octaves)> Lines(Exercise exercise, Pattern pattern, Rung rung)
    {
        ILookup<VoiceLine?, int> placements = rung.Parts.Where(part => part.Sings)
            .ToLookup(part => exercise.Voices.FirstOrDefault(voice => voice.IsFor(part.Part)), part => part.Octaves);
        return placements.Count == 0
            ? [(pattern, [0])]
            : placements.Select(line => (line.Key?.Placed ?? pattern, line.Distinct().ToArray()));
    }

    private static IEnumerable<ScoreNote> Melody(Exercise exercise, (Pattern Pattern, int[] Octaves) line, Rung rung)
    {
        (Pattern pattern, int[] placements) = line;
        Beats start = Beats.Zero;
        foreach (PatternNote note in pattern.Notes)
        {
            if (note.Degree is Degree degree)
            {
                int midi = rung.Tonic.Midi + ModeData.IntervalOf(rung.Mode, degree).Semitones;
                Beats length = Sounding(note.Length, exercise.Articulation);
                int velocity = VelocityAt(exercise, pattern, start);
                foreach (int sounding in placements.Select(octaves => Keyboard.OnPiano(midi + (12 * octaves))).Distinct())
                {
                    yield return new(sounding, start, length, velocity);
                }
            }

            start += note.Length;
        }
    }

    private static IEnumerable<ScoreNote> Chords(Exercise exercise, Pattern pattern, Rung rung, AccompanimentStyle style, (Pattern, int[])[] lines) => style switch
    {
        AccompanimentStyle.CueOnly or AccompanimentStyle.Melody => [],
        AccompanimentStyle.Drone => ChordFigures.Drone(rung.Tonic.Midi, pattern.Length),
        _ => ChordFigures.Of(style, Voiced(exercise, pattern, rung, lines)),
    };

    private static IReadOnlyList<VoicedChord> Voiced(Exercise exercise, Pattern pattern, Rung rung, (Pattern Pattern, int[] Octaves)[] lines) => VoiceLeading.Of(
        exercise.Harmony.Count == 0 ? [TonicChord(rung.Mode, pattern.Length)] : exercise.Harmony,
        rung,
        [.. lines.SelectMany(line => line.Octaves.Select(octaves => new LineInKey(line.Pattern, rung, octaves)))]);

    private static HarmonyChord TonicChord(Mode mode, Beats length) => new(ModeData.Semitones(mode, 3) == 4 ? "I" : "i", length);

    /// <summary>Shortened to where the melody strikes the same key; without length when it sounds there already.</summary>
    private static ScoreNote UnderMelody(ScoreNote tone, List<ScoreNote> melody)
    {
        Beats end = tone.Start + tone.Length;
        Beats taken = melody
            .Where(note => note.Midi == tone.Midi && note.Start + note.Length > tone.Start)
            .Select(note => note.Start)
            .Append(end)
            .Min();
        return tone with { Length = (taken < end ? taken : end) - tone.Start };
    }

    /// <summary>The course of loudness reaches its last word on the last sounding note.</summary>
    private static int VelocityAt(Exercise exercise, Pattern pattern, Beats start)
    {
        int after = pattern.Notes.Reverse().TakeWhile(note => note.Degree is null).Count();
        long last = pattern.Notes.SkipLast(after + 1).Sum(note => note.Length.Ticks);
        return DynamicsData.VelocityAt(exercise.Dynamics, last == 0 ? 0 : (double)start.Ticks / last);
    }

    /// <summary>How long a note sounds: staccato half, marcato three quarters of what is written.</summary>
    private static Beats Sounding(Beats written, Articulation articulation) => articulation switch
    {
        Articulation.Staccato => new(Math.Max(1, written.Ticks / 2)),
        Articulation.Marcato => new(Math.Max(1, written.Ticks * 3 / 4)),
        _ => written,
    };
}
