using System.Globalization;

namespace WarmupConsole.Storage.Yaml;

/// <summary>Reads single values; what cannot be read is null and told.</summary>
public sealed class ValueReader(ProblemList problems)
{
    private const int LongestText = 2000;
    private const int LongestId = 60;

    public ProblemList Problems { get; } = problems;

    /// <summary>A text that is not empty.</summary>
    public YamlText? Filled(YamlNode node, string name) =>
        node is YamlText { Value.Length: 0 } ? Refuse<YamlText>(node, StorageTexts.EmptyText(name)) : Text(node, name);

    /// <summary>A text, perhaps empty.</summary>
    public YamlText? Text(YamlNode node, string name) => node switch
    {
        YamlText { Value.Length: > LongestText } => Refuse<YamlText>(node, StorageTexts.TooLong(name, LongestText)),
        YamlText text => text,
        _ => Refuse<YamlText>(node, StorageTexts.WrongType(name, "a text", node)),
    };

    /// <summary>Lower-case words joined by hyphens, such as "five-note-scale".</summary>
    public string? Id(YamlNode node, string name)
    {
        string? id = Filled(node, name)?.Value;
        return id is null || IsId(id) ? id : Refuse<string>(node, StorageTexts.NotAnId(name, id));
    }

    public int? Whole(YamlNode node, string name, Limits limits)
    {
        decimal? number = Number(node, name, limits);
        return number is null || number == Math.Floor(number.Value) ? (int?)number : RefuseValue<int>(node, StorageTexts.NotWhole(name, limits));
    }

    /// <summary>A number with at most three decimals.</summary>
    public decimal? Number(YamlNode node, string name, Limits limits)
    {
        const NumberStyles Styles = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        if (node is not YamlText { IsPlain: true } text || !decimal.TryParse(text.Value, Styles, CultureInfo.InvariantCulture, out decimal number))
        {
            return RefuseValue<decimal>(node, StorageTexts.WrongType(name, $"a number from {limits}", node));
        }

        return limits.Allow(number) && number == Math.Round(number, 3)
            ? number
            : RefuseValue<decimal>(node, StorageTexts.OutOfRange(name, text.Value, limits));
    }

    public bool? YesNo(YamlNode node, string name) => node switch
    {
        YamlText { IsPlain: true, Value: "true" } => true,
        YamlText { IsPlain: true, Value: "false" } => false,
        _ => RefuseValue<bool>(node, StorageTexts.WrongType(name, "true or false", node)),
    };

    public DateOnly? Date(YamlNode node, string name) =>
        node is YamlText text && DayText.TryRead(text.Value, out DateOnly date)
            ? date
            : RefuseValue<DateOnly>(node, StorageTexts.WrongType(name, "a date such as 2027-02-16", node));

    /// <summary>One word of a table.</summary>
    public T? Choice<T>(YamlNode node, string name, Choices<T> choices)
        where T : struct
    {
        if (Filled(node, name)?.Value is not { } word)
        {
            return null;
        }

        return choices.TryFind(word, out T value) ? value : RefuseValue<T>(node, StorageTexts.NotAChoice(name, word, choices.Names));
    }

    private static bool IsId(string text) =>
        text.Length <= LongestId
        && text.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-')
        && text[0] != '-' && text[^1] != '-';

    private T? Refuse<T>(YamlNode node, string message)
        where T : class
    {
        Problems.Add(node, message);
        return null;
    }

    private T? RefuseValue<T>(YamlNode node, string message)
        where T : struct
    {
        Problems.Add(node, message);
        return null;
    }
}
