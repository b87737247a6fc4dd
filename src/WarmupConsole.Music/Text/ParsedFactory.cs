namespace WarmupConsole.Music.Text;

/// <summary>Makes <see cref="Parsed{T}"/> values.</summary>
internal static class ParsedFactory
{
    internal static Parsed<T> Value<T>(T value) => new(value, []);

    internal static Parsed<T> Errors<T>(IReadOnlyList<TextError> errors) => new(default, errors);

    internal static Parsed<T> Error<T>(string text, string message) => new(default, [new(0, text.Length, message)]);
}
