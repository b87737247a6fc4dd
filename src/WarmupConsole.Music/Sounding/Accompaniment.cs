using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Sounding;

/// <summary>The plain accompaniment of a rung: the melody in every octave in which it is sung, and soft chords under it.</summary>
public static class Accompaniment
{
    private const int ChordFloor = 48;

    /// <summary>Chords lie under the melody: so much softer in velocity.</summary>
    private const int ChordSoftening = 16;

    /// <summary>
    /// From beat 0, in the order of the starts; nothing for exercises without a pattern. Always on the piano (MIDI 21–108),
    /// and no key is struck while it still sounds: a chord tone ends where the melody takes it over.
    /// </summary>
    public static IReadOnlyList<ScoreNote> For(Exercise exercise, Rung rung)
    {
        if (exercise.Pattern is not Pattern pattern)
        {
            return [];
        }

        List<ScoreNote> melody = [.. Lines(exercise, pattern, rung).SelectMany(line => Melody(exercise, line, rung))];
        melody = exercise.Voices.Count == 0 ? melody : SharedKeys.Restruck(melody);
        IEnumerable<ScoreNote> chords = Chords(exercise, pattern, rung).Select(tone => UnderMelody(tone, melody)).Where(tone => tone.Length > Beats.Zero);
        return [.. melody.Concat(chords).OrderBy(note => note.Start)];
    }

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

    private static IEnumerable<ScoreNote> Chords(Exercise exercise, Pattern pattern, Rung rung)
    {
        Beats start = Beats.Zero;
        foreach (HarmonyChord chord in ChordsUnder(exercise))
        {
            int velocity = Math.Max(1, SungTones.VelocityAt(exercise, pattern, start) - ChordSoftening);
            foreach (int midi in ChordTones(chord, rung))
            {
                yield return new(midi, start, chord.Length, velocity);
            }

            start += chord.Length;
        }
    }

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

    /// <summary>From the root in the octave below middle C upwards.</summary>
    private static IEnumerable<int> ChordTones(HarmonyChord chord, Rung rung)
    {
        if (!RomanNumeral.TryParse(chord.Numeral, out RomanNumeral numeral))
        {
            throw new ArgumentException($"'{chord.Numeral}' is no chord.", nameof(chord));
        }

        IReadOnlyList<Interval> tones = numeral.Tones(rung.Mode);
        int root = Keyboard.AtOrAbove(rung.Tonic.Midi + tones[0].Semitones, ChordFloor);
        return tones.Select(tone => root + tone.Semitones - tones[0].Semitones);
    }
}
