using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Repertoire.Places;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Repertoire.Drills;

/// <summary>The tones of some bars as a pattern with the words of the score.</summary>
internal static class DrillLine
{
    private const char Elision = '‿';
    private static readonly Beats Beat = Beats.FromBeats(1);
    private static readonly Beats Longest = Beats.FromBeats(BeatsText.MostBeats);

    /// <summary>The voice of the line that sings most in these bars; empty when nothing is sung there. Of divided notes the upper.</summary>
    internal static IReadOnlyList<SungTone> Tones(DrillQuestion question, ScoreClock clock)
    {
        PartNote[] within = [.. question.Look.Line.Notes.Where(note => note.Bar >= question.From && note.Bar <= question.To)];
        IReadOnlyList<SungTone> tones = SungTones.Of(within, clock).Where(voice => voice.Any(tone => tone.Length > Beats.Zero)).OrderByDescending(voice => voice.Count).FirstOrDefault([]);
        return [.. tones.Where(tone => tone.Length > Beats.Zero)];
    }

    internal static Pattern Of(IReadOnlyList<SungTone> tones, LocalKey key, DrillQuestion question)
    {
        Syllable?[] syllables = Syllables(tones, question);
        List<PatternNote> notes = [];
        for (int at = 0; at < tones.Count; at++)
        {
            Beats rest = at == 0 ? Beats.Zero : tones[at].Start - tones[at - 1].End;
            notes.AddRange(Rests(question.SimpleRhythm ? (rest >= Beat ? Beat : Beats.Zero) : rest));
            Beats length = !question.SimpleRhythm ? tones[at].Length : at == tones.Count - 1 ? Beat * 2 : Beat;
            notes.Add(new(key.DegreeOf(tones[at].High), length < Longest ? length : Longest, syllables[at]));
        }

        return new(notes);
    }

    private static IEnumerable<PatternNote> Rests(Beats rest)
    {
        for (; rest > Beats.Zero; rest -= Longest)
        {
            yield return new(null, rest < Longest ? rest : Longest, null);
        }
    }

    /// <summary>Null where a syllable is carried on; all null when the first has no words, also none from before.</summary>
    private static Syllable?[] Syllables(IReadOnlyList<SungTone> tones, DrillQuestion question)
    {
        string[] words = [.. tones.Select(tone => tone.IsNewSyllable ? Clean(tone.Lyric) : "")];
        words[0] = words[0].Length > 0 ? words[0] : Clean(Before(question));
        return words[0].Length == 0
            ? new Syllable?[tones.Count]
            : [.. words.Select(word => word.Length == 0 ? null : new Syllable(word, question.Vowels?.Invoke(word) ?? ""))];
    }

    private static string Before(DrillQuestion question) =>
        question.Look.Line.Notes.LastOrDefault(note => note.Bar < question.From && note.Lyric.Length > 0) is { Lyric: { } lyric } ? lyric : "";

    /// <summary>Without what separates syllables in a file.</summary>
    private static string Clean(string lyric)
    {
        string joined = string.Join(Elision, lyric.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).Replace('/', Elision);
        return joined.Trim(Elision) is "~" or "" ? "" : joined.Trim(Elision);
    }
}
