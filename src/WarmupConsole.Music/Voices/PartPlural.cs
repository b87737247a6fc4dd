namespace WarmupConsole.Music.Voices;

/// <summary>Parts in sentences, by their singers.</summary>
public static class PartPlural
{
    /// <summary>The singers of a part, as a plural: "the sopranos", "the basses", "the women"; "the singers of Alto 1".</summary>
    public static string Of(Part part)
    {
        string name = part.Name.ToLowerInvariant();
        if (!name.All(char.IsLetter))
        {
            return $"the singers of {part.Name}";
        }

        return "the " + OfName(name);
    }

    /// <summary>The plural of a name in lower case: "sopranos", "basses"; "women" and "tenors" are plurals already.</summary>
    public static string OfName(string name) => name switch
    {
        _ when name.EndsWith("ss", StringComparison.Ordinal) => name + "es",
        _ when name.EndsWith('s') || name.EndsWith("en", StringComparison.Ordinal) => name,
        _ => name + "s",
    };
}
