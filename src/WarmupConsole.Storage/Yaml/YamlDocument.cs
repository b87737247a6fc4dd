namespace WarmupConsole.Storage.Yaml;

/// <summary>The names at the top of a file, with the source they came from.</summary>
public sealed record YamlDocument(SourceText Source, YamlMap Top);
