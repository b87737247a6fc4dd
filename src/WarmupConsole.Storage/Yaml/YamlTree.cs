using YamlDotNet.Core;

namespace WarmupConsole.Storage.Yaml;

/// <summary>
/// Reads YAML into <see cref="YamlNode"/>s. Only the event parser of YamlDotNet is used: its own node tree can be made to overflow
/// the stack by a mapping that contains itself. Nothing here throws on what a file holds.
/// </summary>
public static class YamlTree
{
    /// <summary>The top of a file, which must be names with values, and its source; or all that is wrong with it.</summary>
    public static FileRead<YamlDocument> Read(string file, ReadOnlySpan<byte> bytes)
    {
        FileRead<SourceText> source = Utf8Text.Decode(file, bytes);
        return source.IsGood ? Read(source.Value) : new(null, source.Problems);
    }

    private static FileRead<YamlDocument> Read(SourceText source)
    {
        ProblemList problems = new(source);
        YamlNode? root = Build(source, problems);
        if (problems.Count == 0 && root is not YamlMap)
        {
            problems.Add(root?.Place ?? YamlPlace.Top, root is null ? StorageTexts.Empty : StorageTexts.TopNotNames);
        }

        return problems.Finish(root is YamlMap map ? new YamlDocument(source, map) : null);
    }

    private static YamlNode? Build(SourceText source, ProblemList problems)
    {
        Parser parser = new(new Scanner(new StringReader(source.Text), skipComments: true));
        try
        {
            return new YamlTreeBuilder(parser, problems).Build();
        }
        catch (YamlException fault)
        {
            problems.Add(YamlTreeBuilder.PlaceOf(fault.Start, fault.End), StorageTexts.NotYaml(fault.Message));
        }
        catch (InvalidOperationException)
        {
            // The scanner ends so on some stray brackets; the last event is as near as it can be told.
            Mark end = parser.Current?.End ?? Mark.Empty;
            problems.Add(YamlTreeBuilder.PlaceOf(end, end), StorageTexts.NotYaml("a bracket or sign stands where none may"));
        }

        return null;
    }
}
