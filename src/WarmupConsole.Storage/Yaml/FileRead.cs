using System.Diagnostics.CodeAnalysis;

namespace WarmupConsole.Storage.Yaml;

/// <summary>What a file holds, or everything that is wrong with it.</summary>
/// <param name="Value">Null when there are problems.</param>
/// <param name="Problems">Empty when there is a value.</param>
public sealed record FileRead<T>(T? Value, IReadOnlyList<FileProblem> Problems)
    where T : class
{
    [MemberNotNullWhen(true, nameof(Value))]
    public bool IsGood => Value is not null;
}
