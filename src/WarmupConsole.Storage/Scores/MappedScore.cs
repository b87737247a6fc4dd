using WarmupConsole.Music.Repertoire.Mapping;

namespace WarmupConsole.Storage.Scores;

/// <summary>What a mapping file says.</summary>
/// <param name="Map">Who sings what.</param>
/// <param name="Language">The language of the words, or empty.</param>
public sealed record MappedScore(ScoreMap Map, string Language);
