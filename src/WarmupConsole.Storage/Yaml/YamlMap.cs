namespace WarmupConsole.Storage.Yaml;

/// <summary>Names with values, in the order of the file; no name twice.</summary>
public sealed record YamlMap(IReadOnlyList<YamlField> Fields, YamlPlace Place) : YamlNode(Place)
{
    public override string Words => "names with values";

    public YamlField? Find(string name) => Fields.FirstOrDefault(field => field.Name.Value == name);
}
