using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Marks;

/// <summary>Parts in words: what may be typed for them, and how a sentence names them.</summary>
public static class PartNames
{
    /// <summary>Words that mean the whole choir.</summary>
    internal static readonly string[] Everyone = ["everyone", "everybody", "all", "choir", "the choir", "tutti"];

    /// <summary>The plural of a part's name in lower case: "altos", "basses"; a numbered part keeps its name ("soprano 2").</summary>
    public static string Plural(Part part)
    {
        string name = MarkText.Clean(part.Name).ToLowerInvariant();
        return name.Length == 0 || char.IsDigit(name[^1]) ? name : PartPlural.OfName(name);
    }

    /// <summary>"altos", "tenors and basses", "sopranos, altos and tenors"; "everyone" for none, unknown ids as they are.</summary>
    public static string Sentence(Choir choir, IReadOnlyList<string> partIds)
    {
        string[] names = [.. partIds.Select(id => choir.Parts.FirstOrDefault(part => part.Id == id) is { } part ? Plural(part) : MarkText.Clean(id))];
        return names.Length switch
        {
            0 => "everyone",
            1 => names[0],
            _ => string.Join(", ", names[..^1]) + " and " + names[^1],
        };
    }

    /// <summary>Everything that may be typed for a part; halves of a divided part also answer to the undivided name.</summary>
    internal static IEnumerable<string> Spellings(Part part)
    {
        string name = part.Name.ToLowerInvariant();
        string undivided = name.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9', ' ');
        return [part.Id, PartPlural.OfName(part.Id), name, PartPlural.OfName(name), undivided, PartPlural.OfName(undivided), .. part.Letters, .. part.Groups];
    }
}
