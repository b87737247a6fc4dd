using System.Globalization;

namespace WarmupConsole.Sessions.Live;

/// <summary>The steps whose way back was cut: as many keys of the ladder are left. A value: compared by what it says.</summary>
/// <param name="Keys">By number of the step.</param>
public sealed record Shortened(IReadOnlyDictionary<int, int> Keys)
{
    /// <summary>None.</summary>
    public static Shortened None { get; } = new(new Dictionary<int, int>());

    /// <summary>The same with one more step cut.</summary>
    public Shortened With(int step, int keys) => new(new Dictionary<int, int>(Keys) { [step] = keys });

    /// <summary>As many keys of a planned ladder are left.</summary>
    public int KeysOf(int step, int planned) => Keys.TryGetValue(step, out int left) ? Math.Min(left, planned) : planned;

    /// <summary>By what it says, not by which table holds it.</summary>
    public bool Equals(Shortened? other) => other is not null && ToString() == other.ToString();

    /// <inheritdoc/>
    public override int GetHashCode() => ToString().GetHashCode(StringComparison.Ordinal);

    /// <summary>"3: 5; 7: 4".</summary>
    public override string ToString() => string.Join("; ", Keys.OrderBy(step => step.Key).Select(step => string.Create(CultureInfo.InvariantCulture, $"{step.Key}: {step.Value}")));
}
