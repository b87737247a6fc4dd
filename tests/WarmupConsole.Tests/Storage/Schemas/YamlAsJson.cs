using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Tests.Storage.Schemas;

/// <summary>A YAML text as an editor sees it: plain numbers, yes and no, and nothing have types of their own (YAML 1.2, core schema).</summary>
internal static class YamlAsJson
{
    internal static JsonNode? Read(string yaml)
    {
        FileRead<YamlDocument> read = YamlTree.Read("f", Encoding.UTF8.GetBytes(yaml));
        Assert.True(read.IsGood, string.Join('\n', read.Problems));
        return Node(read.Value.Top);
    }

    private static JsonNode? Node(YamlNode node) => node switch
    {
        YamlMap map => new JsonObject([.. map.Fields.Select(field => KeyValuePair.Create(field.Name.Value, Node(field.Value)))]),
        YamlList list => new JsonArray([.. list.Items.Select(Node)]),
        YamlText { IsPlain: true, Value: "" or "~" or "null" } => null,
        YamlText { IsPlain: true, Value: "true" or "false" } yes => yes.Value == "true",
        YamlText { IsPlain: true } plain when decimal.TryParse(plain.Value, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal number) => number,
        _ => ((YamlText)node).Value,
    };
}
