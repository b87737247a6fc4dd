namespace WarmupConsole.Storage.Yaml;

/// <summary>A piece of a YAML file, with its place.</summary>
public abstract record YamlNode(YamlPlace Place)
{
    /// <summary>What it is, in words for a problem: "a text", "a list".</summary>
    public abstract string Words { get; }
}
