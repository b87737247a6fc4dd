using System.Globalization;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Choirs;

/// <summary>
/// This evening as a director types it: "t 2, b 3 colds, tired". Part first, then how many came and what ails them; a comma ends the part, and
/// what stands alone is said of everyone. What is written reads back as the same.
/// </summary>
public static class TonightText
{
    private const string Colds = "colds";
    private const string Tired = "tired";
    private const string Fresh = "fresh";

    private static readonly string[] ColdWords = [Colds, "cold", "c", "ill", "hoarse"];
    private static readonly string[] TiredWords = [Tired, "ti", "low"];
    private static readonly string[] FreshWords = [Fresh, "lively", "high"];
    private static readonly string[] FillWords = ["and", "the", "with", "have", "has", "only", "energy", "singers", "heads"];

    /// <summary>Null when a word is none of these; empty text is an evening as usual.</summary>
    public static Tonight? Read(string typed, Choir choir)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(choir);
        Tonight tonight = Tonight.AsUsual;
        foreach (string clause in MarkText.Clean(typed).Split([',', ';']))
        {
            string[] words = [.. clause.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(word => word.ToLowerInvariant()).SelectMany(CountApart)];
            if (ReadClause(words, tonight, choir) is not { } more)
            {
                return null;
            }

            tonight = more;
        }

        return tonight.Parts.Count(part => part.Heads == 0) == choir.Parts.Count ? null : tonight;
    }

    /// <summary>"tenors 2, basses 3 colds, tired"; empty as usual.</summary>
    public static string Write(Tonight tonight, Choir choir)
    {
        ArgumentNullException.ThrowIfNull(tonight);
        ArgumentNullException.ThrowIfNull(choir);
        string energy = tonight.Energy switch { Energy.Low => Tired, Energy.High => Fresh, _ => "" };
        return string.Join(", ", tonight.Parts.Select(part => Of(part, choir)).Append(energy).Where(words => words.Length > 0));
    }

    /// <summary>What follows for the ladders: "basses keep to what is easy; tenors go half as far beyond it". Empty when nothing does.</summary>
    public static string Effect(Tonight tonight, Choir choir)
    {
        ArgumentNullException.ThrowIfNull(tonight);
        ArgumentNullException.ThrowIfNull(choir);
        string[] away = [.. tonight.Parts.Where(part => part.Heads == 0).Select(part => part.PartId)];
        IEnumerable<string> narrowed = choir.Parts.Where(part => !away.Contains(part.Id)).GroupBy(tonight.ReachPercentOf).Where(same => same.Key < 100).OrderBy(same => same.Key)
            .Select(same => $"{PartNames.Sentence(choir, same.Count() == choir.Parts.Count ? [] : [.. same.Select(part => part.Id)])}: {HowFar(same.Key)}");
        return string.Join("; ", narrowed.Concat(away.Length == 0 ? [] : [$"without {PartNames.Sentence(choir, away)}"]));
    }

    private static string HowFar(int percent) => percent switch
    {
        0 => "no further than is easy",
        < 50 => "a quarter as far beyond easy",
        _ => "half as far beyond easy",
    };

    private static string Of(PartTonight part, Choir choir)
    {
        string name = choir.Parts.FirstOrDefault(known => known.Id == part.PartId) is { } known ? Spelling(known) : part.PartId;
        string?[] words = [name, part.Heads?.ToString(CultureInfo.InvariantCulture), part.HasColds ? Colds : null, part.IsTired ? Tired : null];
        return string.Join(' ', words.OfType<string>());
    }

    // A name that ends in a number would swallow the count behind it, or be swallowed by it.
    private static string Spelling(Part part) => PartNames.Plural(part) is var plural && !plural.Any(char.IsDigit) ? plural : part.Id;

    /// <summary>"t2" is "t 2", unless a part is called so: that is looked up first where it is read.</summary>
    private static IEnumerable<string> CountApart(string word)
    {
        int letters = word.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9').Length;
        return letters > 0 && letters < word.Length && !word.Contains('-') ? [word[..letters], word[letters..]] : [word];
    }

    /// <summary>A part holds until the next one is named; one that nothing is said of is not understood.</summary>
    private static Tonight? ReadClause(string[] words, Tonight tonight, Choir choir)
    {
        IReadOnlyList<string>? parts = null;
        bool isSaid = true;
        for (int at = 0; at < words.Length;)
        {
            if (LongestParts(words[at..], choir) is { } named)
            {
                (parts, at, isSaid) = (named.Parts, at + named.Words, false);
            }
            else if (Said(words[at], parts, tonight, choir) is { } more)
            {
                (tonight, at, isSaid) = (more, at + 1, true);
            }
            else
            {
                return null;
            }
        }

        return isSaid ? tonight : null;
    }

    /// <summary>As many words from the first one on as name parts.</summary>
    private static (IReadOnlyList<string> Parts, int Words)? LongestParts(string[] words, Choir choir)
    {
        for (int count = words.Length; count > 0; count--)
        {
            if (TypedParts.Find(string.Join(' ', words[..count]), choir) is { } parts)
            {
                return (parts, count);
            }
        }

        return null;
    }

    private static Tonight? Said(string word, IReadOnlyList<string>? parts, Tonight tonight, Choir choir)
    {
        bool isEveryone = parts is null;
        return word switch
        {
            _ when FillWords.Contains(word) => tonight,
            _ when int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int heads) =>
                isEveryone || heads > PartTonight.MostHeads ? null : With(tonight, parts!, choir, part => part with { Heads = heads }),
            _ when ColdWords.Contains(word) => With(tonight, parts ?? [], choir, part => part with { HasColds = true }),
            _ when TiredWords.Contains(word) => isEveryone ? tonight with { Energy = Energy.Low } : With(tonight, parts!, choir, part => part with { IsTired = true }),
            _ when FreshWords.Contains(word) && isEveryone => tonight with { Energy = Energy.High },
            _ => null,
        };
    }

    private static Tonight With(Tonight tonight, IReadOnlyList<string> parts, Choir choir, Func<PartTonight, PartTonight> change)
    {
        string[] meant = [.. choir.Parts.Select(part => part.Id).Where(id => parts.Count == 0 || parts.Contains(id))];
        Dictionary<string, PartTonight> known = tonight.Parts.ToDictionary(part => part.PartId);
        foreach (string id in meant)
        {
            known[id] = change(known.GetValueOrDefault(id) ?? new(id, null, false, false));
        }

        return tonight with { Parts = [.. choir.Parts.Where(part => known.ContainsKey(part.Id)).Select(part => known[part.Id])] };
    }
}
