using System.Globalization;
using System.Text;
using WarmupConsole.Music.Repertoire.Words;

namespace WarmupConsole.Music.Repertoire.Mapping;

/// <summary>What the name of a part says: usual voices, a number, or an instrument.</summary>
/// <param name="Classes">The usual voices it names, from high to low; none when it names none.</param>
/// <param name="Number">1 or more where the name counts ("Soprano II"), else 0.</param>
/// <param name="IsInstrument">True when it names an instrument, also one for practice only.</param>
/// <param name="IsKeyboard">True when that is one that accompanies choirs.</param>
internal sealed record NamedVoice(IReadOnlyList<VoiceClass> Classes, int Number, bool IsInstrument, bool IsKeyboard)
{
    private static readonly string[] Roman = ["i", "ii", "iii", "iv"];

    internal static NamedVoice Of(string name)
    {
        string[] words = Words(name);
        VoiceClass[] classes = [.. words.SelectMany(word => PartNameData.Classes(word.TrimEnd(Digits))).Distinct().Order()];
        int number = words.Select(NumberIn).FirstOrDefault(number => number > 0);
        return new(classes, number, Array.Exists(words, PartNameData.IsInstrument) || IsDoubleBass(words), Array.Exists(words, PartNameData.IsKeyboard));
    }

    /// <summary>Lower-case words without accents, dots and the like.</summary>
    internal static string[] Words(string name)
    {
        StringBuilder plain = new();
        foreach (char c in name)
        {
            plain.Append(char.IsLetterOrDigit(c) ? PlainLetters.Bare(c) : ' ');
        }

        return plain.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries);
    }

    private static char[] Digits { get; } = [.. "0123456789"];

    private static bool IsDoubleBass(string[] words) => words.Contains("double") && words.Contains("bass");

    private static int NumberIn(string word)
    {
        string digits = word[word.TrimEnd(Digits).Length..];
        return digits.Length is 1 or 2 ? int.Parse(digits, CultureInfo.InvariantCulture) : Array.IndexOf(Roman, word) + 1;
    }
}
