namespace WarmupConsole.Storage.Yaml;

/// <summary>From a lowest to a highest number, both allowed, with the unit in words ("minutes") or empty.</summary>
public readonly record struct Limits(int Low, int High, string Unit)
{
    public bool Allow(decimal value) => value >= Low && value <= High;

    public override string ToString() => Unit.Length == 0 ? $"{Low} to {High}" : $"{Low} to {High} {Unit}";
}
