namespace WarmupConsole.Storage.Yaml;

/// <summary>
/// Reads the fields of one mapping, each by its name. Missing ones are told if they must be there; <see cref="Finish"/> tells
/// the names that nobody asked for.
/// </summary>
public sealed class MapReader
{
    private readonly List<string> asked = [];
    private readonly YamlMap map;
    private readonly string what;

    /// <param name="map">The fields.</param>
    /// <param name="what">What they describe, in words: "a part".</param>
    /// <param name="problems">Takes what is wrong.</param>
    public MapReader(YamlMap map, string what, ProblemList problems)
    {
        (this.map, this.what) = (map, what);
        Values = new(problems);
    }

    public ValueReader Values { get; }

    public ProblemList Problems => Values.Problems;

    public YamlPlace Place => map.Place;

    /// <summary>Reads the items of a list, each of which must be names with values; null for one that is not.</summary>
    public static MapReader? Over(YamlNode node, string what, ProblemList problems)
    {
        if (node is YamlMap map)
        {
            return new(map, what, problems);
        }

        problems.Add(node, StorageTexts.WrongType(what, "names with values", node));
        return null;
    }

    /// <summary>The value of a field, or null when it is not there.</summary>
    public YamlNode? Optional(string name)
    {
        asked.Add(name);
        return map.Find(name)?.Value;
    }

    /// <summary>The value of a field; told when it is not there.</summary>
    public YamlNode? Required(string name)
    {
        YamlNode? node = Optional(name);
        if (node is null)
        {
            Problems.Add(map, StorageTexts.Missing(what, name));
        }

        return node;
    }

    /// <summary>A text that must be there and not be empty.</summary>
    public string Text(string name) => Required(name) is { } node ? Values.Filled(node, name)?.Value ?? "" : "";

    /// <summary>A text that may be left out.</summary>
    public string Text(string name, string otherwise) => Optional(name) is { } node ? Values.Text(node, name)?.Value ?? otherwise : otherwise;

    public string Id(string name) => Required(name) is { } node ? Values.Id(node, name) ?? "" : "";

    public int? Whole(string name, Limits limits) => Optional(name) is { } node ? Values.Whole(node, name, limits) : null;

    public bool? YesNo(string name) => Optional(name) is { } node ? Values.YesNo(node, name) : null;

    public DateOnly? Date(string name) => Optional(name) is { } node ? Values.Date(node, name) : null;

    public T? Choice<T>(string name, Choices<T> choices)
        where T : struct => Optional(name) is { } node ? Values.Choice(node, name, choices) : null;

    /// <summary>The items of a list that must be there, within limits.</summary>
    public IReadOnlyList<YamlNode> Items(string name, Limits howMany) => Required(name) is { } node ? Items(node, name, howMany) : [];

    /// <summary>The items of a list that may be left out.</summary>
    public IReadOnlyList<YamlNode> OptionalItems(string name, Limits howMany) => Optional(name) is { } node ? Items(node, name, howMany) : [];

    /// <summary>A list of texts that may be left out.</summary>
    public IReadOnlyList<string> Texts(string name, Limits howMany) =>
        [.. OptionalItems(name, howMany).Select(item => Values.Filled(item, name)?.Value).OfType<string>()];

    /// <summary>Tells every name that was not asked for, with what was probably meant.</summary>
    public void Finish()
    {
        foreach (YamlField field in map.Fields.Where(field => !asked.Contains(field.Name.Value)))
        {
            IReadOnlyList<string> near = Nearest.To(field.Name.Value, asked);
            Problems.Add(field.Name, StorageTexts.Unknown(what, field.Name.Value, near.Count > 0 ? near : [.. asked.Distinct()]));
        }
    }

    private IReadOnlyList<YamlNode> Items(YamlNode node, string name, Limits howMany)
    {
        if (node is not YamlList list)
        {
            Problems.Add(node, StorageTexts.WrongType(name, "a list", node));
            return [];
        }

        if (!howMany.Allow(list.Items.Count))
        {
            Problems.Add(node, StorageTexts.WrongCount(name, list.Items.Count, howMany));
        }

        return list.Items;
    }
}
