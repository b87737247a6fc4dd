using System.Globalization;
using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Storage.MusicXml.Writing;

/// <summary>What stands above the notes of a printed exercise.</summary>
internal static class MusicXmlSheetTexts
{
    internal const string Software = "Warmup Console";

    internal static string Manner(Exercise exercise) => $"{StageData.Words(exercise.Stage)}, {exercise.Articulation.ToString().ToLowerInvariant()}";

    internal static string Keys(int index, string keys, bool isUsedAgain) =>
        isUsedAgain ? string.Create(CultureInfo.InvariantCulture, $"Keys in step {index + 1}: {keys}") : $"Keys: {keys}";
}
