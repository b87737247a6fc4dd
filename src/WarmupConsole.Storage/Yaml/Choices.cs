namespace WarmupConsole.Storage.Yaml;

/// <summary>The words a field may hold, with what each means.</summary>
public sealed class Choices<T>(params IReadOnlyList<(string Name, T Value)> rows)
    where T : struct
{
    public IReadOnlyList<string> Names { get; } = [.. rows.Select(row => row.Name)];

    public bool TryFind(string name, out T value)
    {
        foreach ((string known, T meaning) in rows)
        {
            if (known == name)
            {
                value = meaning;
                return true;
            }
        }

        value = default;
        return false;
    }

    public string Name(T value) => rows.First(row => row.Value.Equals(value)).Name;
}
