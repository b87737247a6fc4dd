using WarmupConsole.Tests.Architecture;

namespace WarmupConsole.Tests.Sessions.Findings.Estimates;

/// <summary>Values computed by other means: Reference/reference.py prints them and says how.</summary>
internal static class EstimateReference
{
    internal static IEnumerable<string[]> Rows(string what) =>
        File.ReadLines(Path.Combine(Repository.Root, "tests", "WarmupConsole.Tests", "Sessions", "Findings", "Reference", "estimates.csv"))
            .Select(line => line.Split(',')).Where(row => row[0] == what);
}
