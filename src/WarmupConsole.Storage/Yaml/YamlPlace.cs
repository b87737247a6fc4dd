namespace WarmupConsole.Storage.Yaml;

/// <summary>Where something stands: line and column from 1, and how many characters of that line it takes.</summary>
public readonly record struct YamlPlace(int Line, int Column, int Length)
{
    /// <summary>The beginning of a file.</summary>
    public static YamlPlace Top => new(1, 1, 1);
}
