namespace WarmupConsole.Storage.Yaml;

/// <summary>What must hold between the fields of a mapping.</summary>
public abstract record FieldRule
{
    /// <summary>One of these fields and no two of them.</summary>
    public sealed record ExactlyOne(IReadOnlyList<string> Names) : FieldRule;

    /// <summary>These fields belong together, unless another one is there.</summary>
    public sealed record Unless(string Other, IReadOnlyList<string> Names) : FieldRule;

    /// <summary>A number is no larger while another field holds a word.</summary>
    public sealed record AtMost(string Number, int Most, string Field, string Word) : FieldRule;

    /// <summary>With one of some words in a field, some must be there and some may not.</summary>
    public sealed record When(string Field, IReadOnlyList<string> Words, IReadOnlyList<string> Needs, IReadOnlyList<string> Refuses) : FieldRule;
}
