using WarmupConsole.Music.Repertoire.Places;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Repertoire.Drills;

/// <summary>Which bars are made a drill, and how.</summary>
/// <param name="Look">The line with the part that sings it.</param>
/// <param name="From">Index of the first bar.</param>
/// <param name="To">Index of the last bar.</param>
/// <param name="SimpleRhythm">A beat for every note, two for the last.</param>
/// <param name="Vowels">The vowel of a syllable in the language of the words; null when its rules are not known.</param>
/// <param name="Choir">All parts of the choir.</param>
public sealed record DrillQuestion(LineLook Look, int From, int To, bool SimpleRhythm, Func<string, string>? Vowels, IReadOnlyList<Part> Choir);
