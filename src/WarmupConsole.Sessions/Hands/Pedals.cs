namespace WarmupConsole.Sessions.Hands;

/// <summary>Which control does what on this machine. A control has one use, and a use one control.</summary>
/// <param name="Bound">By use.</param>
public sealed record Pedals(IReadOnlyDictionary<PedalUse, Control> Bound)
{
    /// <summary>No control has a use.</summary>
    public static Pedals None { get; } = new(new Dictionary<PedalUse, Control>());

    /// <summary>The same with one use learnt; what the control did before, it does no more.</summary>
    public Pedals With(PedalUse use, Control control) => new(
        Bound.Where(row => row.Key != use && (row.Value.IsKey, row.Value.Number) != (control.IsKey, control.Number))
            .Append(new(use, control)).ToDictionary());

    /// <summary>The use of a key or controller, and how it is bound; null when it has none.</summary>
    public (PedalUse Use, Control Control)? Find(bool isKey, int number)
    {
        foreach ((PedalUse use, Control control) in Bound)
        {
            if (control.IsKey == isKey && control.Number == number)
            {
                return (use, control);
            }
        }

        return null;
    }

    /// <summary>By what it says, not by which table holds it.</summary>
    public bool Equals(Pedals? other) => other is not null && ToString() == other.ToString();

    /// <inheritdoc/>
    public override int GetHashCode() => ToString().GetHashCode(StringComparison.Ordinal);

    /// <summary>"sustain: go on; soft: pin"; empty when there is none.</summary>
    public override string ToString() =>
        string.Join("; ", PedalUseData.All.Where(Bound.ContainsKey).Select(use => $"{Bound[use]}: {PedalUseData.Words(use)}"));
}
