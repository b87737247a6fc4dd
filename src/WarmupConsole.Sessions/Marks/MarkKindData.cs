using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Marks;

/// <summary>One row per kind of mark: its id in logs, its words in a sentence, what may be typed for it, and whether it is praise or too much effort.</summary>
/// <remarks>Single letters are given only where no usual part has the same letter, except s, which is a part when it comes first.</remarks>
public static class MarkKindData
{
    /// <summary>The kinds that every choir has, in the order they are shown.</summary>
    public static IReadOnlyList<MarkKind> Usual { get; } =
    [
        new("flat", "flat", ["f", "fl", "♭", "low", "sagging", "sags", "sagged", "under", "under pitch", "below pitch", "flatting"], false),
        new("sharp", "sharp", ["s", "sh", "♯", "#", "over", "above pitch", "over pitch"], false),
        new("strained", "strained", ["st", "strain", "straining", "tight"], false) { IsEffort = true },
        new("pressed", "pressed", ["p", "pr", "pressing", "pushed", "pushing"], false) { IsEffort = true },
        new("easy", "easy", ["e", "easily"], true),
        new("breathy", "breathy", ["br", "airy"], false),
        new("short-of-breath", "short of breath", ["sb", "short", "breath", "out of breath"], false),
        new("late", "late", ["l", "behind", "dragging", "slow", "sluggish"], false),
        new("early", "early", ["ea", "ahead", "rushing"], false),
        new("uneven", "uneven", ["u", "un", "bumpy"], false),
        new("scooping", "scooping", ["sc", "scoop", "scoops", "scooped"], false),
        new("dark", "dark", ["d", "dull"], false),
        new("thin", "thin", ["th"], false),
        new("vowel", "off in the vowel", ["v", "vowels"], false),
        new("blend", "out of blend", ["bl", "blending"], false),
        new("tired", "tired", ["ti", "tiring"], false) { IsEffort = true },
        new("hoarse", "hoarse", ["ho", "husky", "raspy"], false) { IsEffort = true },
        new("good", "good", ["g", "ok", "well", "lovely"], true),
    ];

    /// <summary>The choir's own kinds first (they win over a usual spelling), then the usual ones.</summary>
    public static IReadOnlyList<MarkKind> Of(Choir choir) => [.. choir.OwnMarkKinds, .. Usual];

    /// <summary>The kind with that id in this choir, or null when none has it (a log from another time).</summary>
    public static MarkKind? Find(Choir choir, string id)
    {
        ArgumentNullException.ThrowIfNull(choir);
        return choir.OwnMarkKinds.FirstOrDefault(kind => kind.Id == id) ?? Usual.FirstOrDefault(kind => kind.Id == id);
    }

    /// <summary>True for a kind that says that a voice had too much to do.</summary>
    public static bool IsEffort(Choir choir, string id) => Find(choir, id)?.IsEffort == true;
}
