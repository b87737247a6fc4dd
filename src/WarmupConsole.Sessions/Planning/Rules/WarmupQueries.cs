using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>What several rules ask of a warm-up.</summary>
internal static class WarmupQueries
{
    /// <summary>The first step whose exercise is like that, or no exercise.</summary>
    internal static (int Step, Exercise? Exercise) FirstWhere(this Warmup warmup, Func<Exercise, bool> isLike) =>
        warmup.Steps.Select((step, index) => (index, (Exercise?)step.Exercise)).FirstOrDefault(row => isLike(row.Item2!));

    /// <summary>IPA of the first syllable, or empty.</summary>
    internal static string FirstVowel(this Pattern pattern) =>
        pattern.Notes.FirstOrDefault(note => note.Syllable is not null)?.Syllable?.Vowel ?? "";

    /// <summary>The first note like that in some rungs of a step; asked for the lowest and the highest note of every part that sings.</summary>
    internal static SungAt? FirstNote(this Warmup warmup, int step, IEnumerable<Rung> rungs, Func<VoiceRange, Pitch, bool> isLike)
    {
        IEnumerable<SungAt?> notes =
            from rung in rungs
            from part in rung.Parts
            where part.Sings
            from note in new[] { part.Span.High, part.Span.Low }
            where isLike(part.Part.Range, note)
            select (SungAt?)new SungAt(warmup, step, part.Part, rung.Tonic, note);
        return notes.FirstOrDefault();
    }
}
