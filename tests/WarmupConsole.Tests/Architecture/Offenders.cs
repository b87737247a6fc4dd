namespace WarmupConsole.Tests.Architecture;

/// <summary>Asserts about many things at once: a failure lists every offender, not the first.</summary>
internal static class Offenders
{
    internal static void None(string rule, IEnumerable<string> offenders)
    {
        string[] all = [.. offenders];
        Assert.True(all.Length == 0, $"{rule} ({all.Length}):\n  " + string.Join("\n  ", all));
    }

    /// <summary>The value below which the given share (in per cent) of all values lies, by the nearest rank.</summary>
    internal static int Percentile(IEnumerable<int> values, int percent)
    {
        int[] sorted = [.. values.Order()];
        return sorted[Math.Max(0, ((sorted.Length * percent) + 99) / 100 - 1)];
    }
}
