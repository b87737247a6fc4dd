namespace WarmupConsole.Storage.Yaml;

/// <summary>
/// What one mapping may hold, a row per field. Readers ask by name and get what the row says; the JSON Schemas under docs/schemas are
/// written from the same rows.
/// </summary>
/// <param name="What">What the mapping describes, in words: "a part".</param>
/// <param name="Rows">In the order in which they are told.</param>
public sealed record FieldTable(string What, params IReadOnlyList<Field> Rows)
{
    /// <summary>What must hold between fields.</summary>
    public IReadOnlyList<FieldRule> Rules { get; init; } = [];

    public IReadOnlyList<string> Names { get; } = [.. Rows.Select(row => row.Name)];

    /// <exception cref="InvalidOperationException">There is no such row: the reader asks for what the table does not offer.</exception>
    public Field this[string name] => Rows.FirstOrDefault(row => row.Name == name)
        ?? throw new InvalidOperationException($"{What} has no field {name} in its table.");
}
