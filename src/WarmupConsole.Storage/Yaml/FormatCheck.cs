namespace WarmupConsole.Storage.Yaml;

/// <summary>The first field of every file: which form it is written in.</summary>
internal static class FormatCheck
{
    internal const int Newest = 1;

    /// <summary>The fields of a file whose form is known; in a newer form nothing else is judged.</summary>
    internal static FileRead<MapReader> Open(string file, ReadOnlySpan<byte> bytes, FieldTable table)
    {
        FileRead<YamlDocument> document = YamlTree.Read(file, bytes);
        if (!document.IsGood)
        {
            return new(null, document.Problems);
        }

        MapReader reader = new(document.Value.Top, table, new(document.Value.Source));
        YamlNode? format = reader.Find("format");
        bool isNewer = format is YamlText { IsPlain: true } text && int.TryParse(text.Value, out int number) && number > Newest;
        if (isNewer)
        {
            reader.Problems.Add(format!, StorageTexts.NewerFile(((YamlText)format!).Value));
            return new(null, reader.Problems.All);
        }

        if (format is not null)
        {
            reader.Whole("format");
        }

        return new(reader, []);
    }
}
