using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Sounding;

/// <summary>Chords in the manner of a style, without their loudness.</summary>
internal static class ChordFigures
{
    private const int Fifth = 7;
    private const int Octave = 12;

    /// <summary>A piano's tone dies away: no longer than this is a chord left standing before it is struck again.</summary>
    private static readonly Beats Longest = Beats.FromBeats(4);

    private static readonly Beats Half = Beats.FromFraction(1, 2);

    /// <summary>The voices of a broken chord in their order, from the bass up and down again.</summary>
    private static readonly int[] UpAndDown = [0, 1, 2, 3, 2, 1];

    internal static IEnumerable<ScoreNote> Of(AccompanimentStyle style, IReadOnlyList<VoicedChord> chords) =>
        chords.SelectMany(Strokes).SelectMany(chord => style switch
        {
            AccompanimentStyle.Broken => Broken(chord),
            AccompanimentStyle.BassAndChord => BassAndChord(chord),
            _ => All(chord),
        });

    /// <summary>Tonic, fifth and octave in the left hand, for as long as the exercise lasts.</summary>
    internal static IEnumerable<ScoreNote> Drone(int tonic, Beats length)
    {
        int low = Keyboard.AtOrAbove(tonic, GripBook.LowestBass);
        VoicedChord whole = new(new Grip(low, low + Fifth, low + Octave, low + Octave, IsInverted: false), Beats.Zero, length);
        return Strokes(whole).SelectMany(stroke => new[] { low, low + Fifth, low + Octave }.Select(midi => Note(midi, stroke.Start, stroke.Length)));
    }

    /// <summary>A long chord as several, each but the last as long as one may be; too short a rest is left to the one before.</summary>
    private static IEnumerable<VoicedChord> Strokes(VoicedChord chord)
    {
        Beats start = chord.Start;
        Beats end = chord.Start + chord.Length;
        while (end - start > Longest + Half + Half)
        {
            yield return chord with { Start = start, Length = Longest };
            start += Longest;
        }

        yield return chord with { Start = start, Length = end - start };
    }

    private static IEnumerable<ScoreNote> All(VoicedChord chord) =>
        Enumerable.Range(0, Grip.Voices).Select(voice => Note(chord.Grip[voice], chord.Start, chord.Length));

    /// <summary>A tone each half beat, held as long as the chord; in a short chord several at once.</summary>
    private static IEnumerable<ScoreNote> Broken(VoicedChord chord)
    {
        int places = (int)Math.Max(1, chord.Length.Ticks / Half.Ticks);
        return places < Grip.Voices
            ? Enumerable.Range(0, Grip.Voices).Select(voice => Held(chord, chord.Grip[voice], voice * places / Grip.Voices))
            : Enumerable.Range(0, places).Select(place => Held(chord, chord.Grip[UpAndDown[place % UpAndDown.Length]], place));
    }

    private static ScoreNote Held(VoicedChord chord, int midi, int place) => Note(midi, chord.Start + (Half * place), chord.Length - (Half * place));

    /// <summary>In turn, a beat each; a chord of less than two beats is shared between them.</summary>
    private static IEnumerable<ScoreNote> BassAndChord(VoicedChord chord)
    {
        Beats beat = chord.Length >= Beats.FromBeats(2) ? Beats.FromBeats(1) : new(Math.Max(1, chord.Length.Ticks / 2));
        Beats end = chord.Start + chord.Length;
        bool isBass = true;
        for (Beats start = chord.Start; start < end; start += beat)
        {
            Beats length = start + beat > end ? end - start : beat;
            int[] voices = isBass ? [0] : [1, 2, 3];
            foreach (int voice in voices)
            {
                yield return Note(chord.Grip[voice], start, length);
            }

            isBass = !isBass;
        }
    }

    private static ScoreNote Note(int midi, Beats start, Beats length) => new(midi, start, length, 1);
}
