namespace WarmupConsole.Storage.Yaml;

/// <summary>
/// Reads the fields of one mapping, each by its name and as its <see cref="FieldTable"/> says. Missing ones are told if they must be
/// there; <see cref="Finish"/> tells the names that are in no table.
/// </summary>
public sealed class MapReader
{
    private readonly HashSet<string> missed = [];
    private readonly YamlMap map;
    private readonly FieldTable table;

    /// <param name="map">The fields.</param>
    /// <param name="table">What they may be.</param>
    /// <param name="problems">Takes what is wrong.</param>
    public MapReader(YamlMap map, FieldTable table, ProblemList problems)
    {
        (this.map, this.table) = (map, table);
        Values = new(problems);
    }

    public ValueReader Values { get; }

    public ProblemList Problems => Values.Problems;

    public YamlPlace Place => map.Place;

    /// <summary>The value of a field, or null when it is not there; told, once, when it must be.</summary>
    public YamlNode? Find(string name) => table[name].IsRequired ? Require(name) : map.Find(name)?.Value;

    /// <summary>The value of a field that must be there because of what else is, or is not, there.</summary>
    public YamlNode? Require(string name)
    {
        YamlNode? node = map.Find(name)?.Value;
        if (node is null && missed.Add(name))
        {
            Problems.Add(map, StorageTexts.Missing(table.What, name));
        }

        return node;
    }

    /// <summary>A text, which may be empty only where it may be left out.</summary>
    public string Text(string name, string otherwise = "") => Find(name) is { } node
        ? (table[name].IsRequired ? Values.Filled(node, name) : Values.Text(node, name))?.Value ?? otherwise
        : otherwise;

    public string Id(string name) => Find(name) is { } node ? Values.Id(node, name) ?? "" : "";

    public int? Whole(string name) => Find(name) is { } node ? Values.Whole(node, name, Shape<FieldShape.Whole>(name).Limits) : null;

    public decimal? Number(string name) => Find(name) is { } node ? Values.Number(node, name, Shape<FieldShape.Number>(name).Limits) : null;

    public bool? YesNo(string name) => Find(name) is { } node ? Values.YesNo(node, name) : null;

    public DateOnly? Date(string name) => Find(name) is { } node ? Values.Date(node, name) : null;

    public T? Choice<T>(string name)
        where T : struct => Find(name) is { } node ? ChoiceOf<T>(name, node) : null;

    /// <summary>The items of a list, within its limits.</summary>
    public IReadOnlyList<YamlNode> Items(string name) => Find(name) is { } node ? Items(node, name) : [];

    /// <summary>The items of a list, or the one value that stands in its place.</summary>
    public IReadOnlyList<YamlNode> OneOrMany(string name) => Find(name) is YamlText single ? [single] : Items(name);

    /// <summary>A list of texts.</summary>
    public IReadOnlyList<string> Texts(string name) => [.. Items(name).Select(item => Values.Filled(item, name)?.Value).OfType<string>()];

    /// <summary>A list of words, or one of them.</summary>
    public IReadOnlyList<T> Choices<T>(string name)
        where T : struct => [.. OneOrMany(name).Select(item => ChoiceOf<T>(name, item)).OfType<T>()];

    /// <summary>The fields of a field; null when it is not there or has none.</summary>
    public MapReader? Map(string name) => Find(name) is { } node ? Over(node, name) : null;

    /// <summary>The fields of each item of a list; items that have none are told and left out.</summary>
    public IEnumerable<MapReader> Maps(string name) => Items(name).Select(item => Over(item, name)).OfType<MapReader>();

    /// <summary>Tells every name that the table does not have, with what was probably meant.</summary>
    public void Finish()
    {
        foreach (YamlField field in map.Fields.Where(field => !table.Names.Contains(field.Name.Value)))
        {
            IReadOnlyList<string> near = Nearest.To(field.Name.Value, table.Names);
            Problems.Add(field.Name, StorageTexts.Unknown(table.What, field.Name.Value, near.Count > 0 ? near : table.Names));
        }
    }

    private T Shape<T>(string name)
        where T : FieldShape => table[name].Shape.As<T>();

    private T? ChoiceOf<T>(string name, YamlNode node)
        where T : struct => Values.Choice(node, name, Shape<FieldShape.Choice<T>>(name).Choices);

    private MapReader? Over(YamlNode node, string name)
    {
        FieldTable inner = Shape<FieldShape.Map>(name).Table;
        if (node is YamlMap fields)
        {
            return new(fields, inner, Problems);
        }

        Problems.Add(node, StorageTexts.WrongType(inner.What, "names with values", node));
        return null;
    }

    private IReadOnlyList<YamlNode> Items(YamlNode node, string name)
    {
        if (node is not YamlList list)
        {
            Problems.Add(node, StorageTexts.WrongType(name, "a list", node));
            return [];
        }

        Limits howMany = Shape<FieldShape.List>(name).HowMany;
        if (!howMany.Allow(list.Items.Count))
        {
            Problems.Add(node, StorageTexts.WrongCount(name, list.Items.Count, howMany));
        }

        return list.Items;
    }
}
