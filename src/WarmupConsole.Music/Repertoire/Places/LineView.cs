using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Repertoire.Places;

/// <summary>What the hard places of one line are looked for with.</summary>
/// <param name="Range">Of the part that sings it.</param>
/// <param name="Vowels">The vowel of a syllable by the rules of its language, or null when they are not known.</param>
/// <param name="WeakPitches">MIDI numbers at which the logs show trouble.</param>
/// <param name="All">All sung lines.</param>
/// <param name="Own">The line itself.</param>
/// <param name="HasOthers">True when it is not the only one.</param>
internal sealed record LineView(VoiceRange Range, Func<string, string>? Vowels, IReadOnlySet<int> WeakPitches, Ensemble All, Ensemble Own, bool HasOthers)
{
    /// <summary>Closed and nearly closed vowels (i, u, ɪ, ʊ): the first two of seven steps of the vowel chart, as the check of plans has it.</summary>
    private const double ClosedTo = 0.2;

    /// <summary>High begins a whole step below the comfortable top.</summary>
    private const int BelowTop = 2;

    /// <summary>A note from here on is high for the part.</summary>
    internal int HighFrom => Range.Comfortable.High.Midi - BelowTop;

    internal bool IsClosed(string syllable) =>
        Vowels is not null && syllable.Length > 0 && Vowels(syllable) is { Length: > 0 } vowel && VowelData.Height(vowel) is <= ClosedTo;
}
