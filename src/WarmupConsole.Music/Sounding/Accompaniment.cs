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
            .Select(tone => UnderMelody(tone with { Velocity = Math.Max(1, SungTones.VelocityAt(exercise, pattern, tone.Start) - ChordSoftening) }, melody))
            .Where(tone => tone.Length > Beats.Zero);
        return [.. melody.Concat(chords).OrderBy(note => note.Start)];
    }

    /// <summary>How the chords are laid under the hands, for the styles that have any.</summary>
    public static IReadOnlyList<VoicedChord> Voiced(Exercise exercise, Rung rung) =>
        exercise.Pattern is { } pattern ? Voiced(exercise, rung, [.. Lines(exercise, pattern, rung)]) : [];

    /// <summary>What those who sing do sing, and in which octaves; when all rest, the pattern as written.</summary>
    private static IEnumerable<(Pattern Pattern, int[] Octaves)> Lines(Exercise exercise, Pattern pattern, Rung rung)
    {
        ILookup<VoiceLine?, int> placements = rung.Parts.Where(part => part.Sings)
            .ToLookup(part => exercise.Voices.FirstOrDefault(voice => voice.IsFor(part.Part)), part => part.Octaves);
        return placements.Count == 0
            ? [(pattern, [0])]
            : placements.Select(line => (line.Key?.Placed ?? pattern, line.Distinct().ToArray()));
    }

    private static IEnumerable<ScoreNote> Melody(Exercise exercise, (Pattern Pattern, int[] Octaves) line, Rung rung) =>
        from tone in SungTones.Of(exercise, line.Pattern, rung, 0)
        from midi in line.Octaves.Select(octaves => Keyboard.OnPiano(tone.Pitch.Midi + (12 * octaves))).Distinct()
        select tone.Note with { Midi = midi };

    private static IEnumerable<ScoreNote> Chords(Exercise exercise, Pattern pattern, Rung rung, AccompanimentStyle style, (Pattern, int[])[] lines) => style switch
    {
        AccompanimentStyle.CueOnly or AccompanimentStyle.Melody => [],
        AccompanimentStyle.Drone => ChordFigures.Drone(rung.Tonic.Midi, pattern.Length),
        _ => ChordFigures.Of(style, Voiced(exercise, rung, lines)),
    };

    private static IReadOnlyList<VoicedChord> Voiced(Exercise exercise, Rung rung, (Pattern Pattern, int[] Octaves)[] lines) => VoiceLeading.Of(
        ChordsUnder(exercise),
        rung,
        [.. lines.SelectMany(line => line.Octaves.Select(octaves => new LineInKey(line.Pattern, rung, octaves)))]);

    /// <summary>The chords under an exercise's pattern: its own, else its tonic chord throughout; none for exercises without a pattern.</summary>
    public static IReadOnlyList<HarmonyChord> ChordsUnder(Exercise exercise) => (exercise.Pattern, exercise.Harmony.Count) switch
    {
        (null, _) => [],
        ({ } pattern, 0) => [new(ModeData.Semitones(exercise.Mode, 3) == 4 ? "I" : "i", pattern.Length)],
        _ => exercise.Harmony,
    };

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
}
