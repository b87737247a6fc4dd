using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Sessions.Choirs;

/// <summary>This evening as a session log keeps it.</summary>
internal static class TonightFact
{
    private const string Low = "low";
    private const string High = "high";
    private const string Usual = "usual";

    internal static TonightTold Write(Tonight tonight, string raw) => new(
        [.. tonight.Parts.Select(part => part.PartId)],
        [.. tonight.Parts.Select(part => part.Heads ?? -1)],
        [.. tonight.Parts.Select(part => part.HasColds)],
        [.. tonight.Parts.Select(part => part.IsTired)],
        tonight.Energy switch { Energy.Low => Low, Energy.High => High, _ => Usual },
        raw);

    /// <summary>Lists of different lengths count as far as all of them go.</summary>
    internal static Tonight Read(TonightTold told) => new()
    {
        Energy = told.Energy switch { Low => Energy.Low, High => Energy.High, _ => Energy.Usual },
        Parts = [.. told.Parts.Zip(told.Heads, told.Colds).Zip(told.Tired, (part, tired) => new PartTonight(part.First, part.Second < 0 ? null : part.Second, part.Third, tired))],
    };
}
