using System.Diagnostics.CodeAnalysis;

namespace WarmupConsole.Music.Text;

/// <summary>What was read from a text: a value, or everything that is wrong with it at once.</summary>
/// <param name="Value">What was read; meaningful only when <see cref="Ok"/>.</param>
/// <param name="Errors">In the order of the text; empty when it was read.</param>
public sealed record Parsed<T>(T? Value, IReadOnlyList<TextError> Errors)
{
    /// <summary>True when there is a value and nothing is wrong.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    public bool Ok => Errors.Count == 0;
}
