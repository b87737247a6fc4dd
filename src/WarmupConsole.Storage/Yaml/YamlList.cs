namespace WarmupConsole.Storage.Yaml;

/// <summary>A list of pieces.</summary>
public sealed record YamlList(IReadOnlyList<YamlNode> Items, YamlPlace Place) : YamlNode(Place)
{
    public override string Words => "a list";
}
