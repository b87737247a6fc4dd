namespace WarmupConsole.Music.Repertoire.Places;

/// <summary>What a score is looked at with, besides the ranges of the choir.</summary>
/// <param name="AsPlayed">Repeats, endings and leaps count as often as they are sung.</param>
/// <param name="Vowels">The vowel of a syllable in the language of the words; null when its rules are not known.</param>
/// <param name="WeakPitches">What the logs show.</param>
public sealed record LookQuestion(bool AsPlayed, Func<string, string>? Vowels, IReadOnlyList<WeakPitch> WeakPitches)
{
    /// <summary>The score as it stands, and nothing else known.</summary>
    public static LookQuestion Plain { get; } = new(false, null, []);
}
