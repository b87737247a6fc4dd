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

    /// <summary>The first rung and part that sings a note like that; asked for the lowest and the highest note of every rung.</summary>
    internal static (Rung Rung, Part Part, Pitch Note)? FirstNote(this IEnumerable<Rung> rungs, Func<VoiceRange, Pitch, bool> isLike)
    {
        IEnumerable<(Rung Rung, Part Part, Pitch Note)> notes =
            from rung in rungs
            from part in rung.Parts
            where part.Sings
            from note in new[] { part.Span.High, part.Span.Low }
            where isLike(part.Part.Range, note)
            select (rung, part.Part, note);
        return notes.Select(note => ((Rung, Part, Pitch)?)note).FirstOrDefault();
    }
}
