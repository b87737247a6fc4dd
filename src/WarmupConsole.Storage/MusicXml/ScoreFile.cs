using WarmupConsole.Music.Repertoire;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.MusicXml;

/// <summary>What was read of a score file.</summary>
/// <param name="Score">What is usable of it; null when nothing is.</param>
/// <param name="Problems">What is wrong, in the order of the file.</param>
/// <param name="IsWhole">False when notes or parts may be missing; a score with problems may be whole all the same.</param>
public sealed record ScoreFile(Score? Score, IReadOnlyList<FileProblem> Problems, bool IsWhole)
{
    internal static ScoreFile Refused(string file, string message) => new(null, [FileProblem.Whole(file, message)], false);
}
