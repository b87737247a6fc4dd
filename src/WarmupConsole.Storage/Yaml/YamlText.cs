namespace WarmupConsole.Storage.Yaml;

/// <summary>A single value.</summary>
/// <param name="Value">The text, without quotes.</param>
/// <param name="IsPlain">True when it stands without quotes and may be read as a number or a yes or no.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="Verbatim">True when the value stands in the source character by character from <paramref name="ValueColumn"/> on.</param>
/// <param name="ValueColumn">Column of its first character, inside any quote.</param>
public sealed record YamlText(string Value, bool IsPlain, YamlPlace Place, bool Verbatim, int ValueColumn) : YamlNode(Place)
{
    public override string Words => Value.Length == 0 ? "nothing" : "a text";

    /// <summary>The place of a stretch of the value; the whole value when it does not stand verbatim in the source.</summary>
    public YamlPlace Stretch(int offset, int length) =>
        Verbatim && offset >= 0 && offset <= Value.Length ? new(Place.Line, ValueColumn + offset, Math.Max(1, length)) : Place;
}
