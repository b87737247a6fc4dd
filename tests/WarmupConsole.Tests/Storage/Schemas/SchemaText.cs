using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Tests.Storage.Schemas;

/// <summary>Writes the JSON Schema of a file from the table that its reader reads by.</summary>
internal static class SchemaText
{
    private const string IdPattern = "^[a-z0-9]([a-z0-9-]*[a-z0-9])?$";

    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    internal static string Write(FieldTable table)
    {
        JsonObject schema = new() { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["title"] = table.What };
        foreach ((string name, JsonNode? value) in Map(table).ToArray())
        {
            schema[name] = value?.DeepClone();
        }

        return schema.ToJsonString(Indented) + "\n";
    }

    private static JsonObject Map(FieldTable table)
    {
        JsonObject properties = [];
        foreach (Field field in table.Rows)
        {
            JsonObject shape = Shape(field.Shape, field.IsRequired);
            shape["description"] = field.About;
            properties[field.Name] = shape;
        }

        JsonObject map = new()
        {
            ["type"] = "object",
            ["properties"] = properties,
            ["required"] = Names(table.Rows.Where(field => field.IsRequired).Select(field => field.Name)),
            ["additionalProperties"] = false,
        };
        if (table.Rules.Count > 0)
        {
            map["allOf"] = new JsonArray([.. table.Rules.Select(Rule)]);
        }

        return map;
    }

    private static JsonObject Shape(FieldShape shape, bool isRequired = true) => shape switch
    {
        // A plain 12 or true is a text to the reader; a text that may be left out may also be empty.
        FieldShape.Text => new() { ["type"] = Names([.. (string[])["string", "number", "boolean"], .. isRequired ? (string[])[] : ["null"]]), ["maxLength"] = 2000 },
        FieldShape.Id => new() { ["type"] = "string", ["pattern"] = IdPattern, ["maxLength"] = 60 },
        FieldShape.Whole whole => Number("integer", whole.Limits),
        FieldShape.Number number => Number("number", number.Limits),
        FieldShape.YesNo => new() { ["type"] = "boolean" },
        FieldShape.Date => new() { ["type"] = "string", ["pattern"] = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" },
        FieldShape.Choice choice => new() { ["enum"] = Names(choice.Names) },
        FieldShape.List list => new() { ["type"] = "array", ["minItems"] = list.HowMany.Low, ["maxItems"] = list.HowMany.High, ["items"] = Shape(list.Item) },
        FieldShape.Map map => Map(map.Table),
        FieldShape.Either either => new() { ["anyOf"] = new JsonArray(Shape(either.First), Shape(either.Second)) },
        _ => throw new InvalidOperationException($"No schema is written for {shape}."),
    };

    private static JsonObject Number(string type, Limits limits) => new() { ["type"] = type, ["minimum"] = limits.Low, ["maximum"] = limits.High };

    private static JsonObject Rule(FieldRule rule) => rule switch
    {
        FieldRule.ExactlyOne one => new() { ["oneOf"] = new JsonArray([.. one.Names.Select(name => Required([name]))]) },
        FieldRule.Unless unless => new() { ["if"] = Required([unless.Other]), ["else"] = Required(unless.Names) },
        FieldRule.When given => new()
        {
            ["if"] = Holding(given.Field, given.Words),
            ["then"] = new JsonObject
            {
                ["required"] = Names(given.Needs),
                ["properties"] = new JsonObject([.. given.Refuses.Select(name => KeyValuePair.Create(name, (JsonNode?)false))]),
            },
        },
        FieldRule.AtMost most => new()
        {
            ["if"] = Holding(most.Field, [most.Word]),
            ["then"] = new JsonObject { ["properties"] = new JsonObject { [most.Number] = new JsonObject { ["maximum"] = most.Most } } },
        },
        _ => throw new InvalidOperationException($"No schema is written for {rule}."),
    };

    private static JsonObject Holding(string field, IEnumerable<string> words) => new()
    {
        ["required"] = Names([field]),
        ["properties"] = new JsonObject { [field] = new JsonObject { ["enum"] = Names(words) } },
    };

    private static JsonObject Required(IEnumerable<string> names) => new() { ["required"] = Names(names) };

    private static JsonArray Names(IEnumerable<string> names) => new([.. names.Select(name => (JsonNode?)name)]);
}
