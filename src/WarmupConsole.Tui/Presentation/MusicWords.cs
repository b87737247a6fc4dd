using System.Text;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Tui.Presentation;

/// <summary>Words for what the music types name.</summary>
internal static class MusicWords
{
    /// <summary>The name in words: "major", "harmonic minor", "legato".</summary>
    internal static string Lower<T>(T value)
        where T : struct, Enum
    {
        StringBuilder words = new();
        foreach (char letter in value.ToString())
        {
            words.Append(char.IsUpper(letter) && words.Length > 0 ? " " : "").Append(char.ToLowerInvariant(letter));
        }

        return words.ToString();
    }

    /// <summary>A degree with real signs: "♭3".</summary>
    internal static string Degree(Degree degree) => degree.ToString().Replace('b', '♭').Replace('#', '♯');
}
