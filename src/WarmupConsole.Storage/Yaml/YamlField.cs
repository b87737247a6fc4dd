namespace WarmupConsole.Storage.Yaml;

/// <summary>One name with its value.</summary>
public sealed record YamlField(YamlText Name, YamlNode Value);
