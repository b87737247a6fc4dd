namespace WarmupConsole.Storage.Yaml;

/// <summary>Tells a value that must be unique in a file and stands there a second time.</summary>
internal static class UniqueCheck
{
    /// <param name="lines">The line of each value met so far.</param>
    /// <param name="fields">The fields that it belongs to.</param>
    /// <param name="name">The name of its field.</param>
    /// <param name="value">The value; an empty one has been told already.</param>
    internal static void Add(Dictionary<string, int> lines, MapReader fields, string name, string value)
    {
        YamlPlace place = fields.Find(name)?.Place ?? fields.Place;
        if (value.Length > 0 && !lines.TryAdd(value, place.Line))
        {
            fields.Problems.Add(place, StorageTexts.AlreadyUsed(name, value, lines[value]));
        }
    }
}
