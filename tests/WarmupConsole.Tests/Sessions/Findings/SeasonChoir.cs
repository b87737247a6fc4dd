using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Findings.Exposure;
using WarmupConsole.Tests.Sessions.Findings.Seasons;

namespace WarmupConsole.Tests.Sessions.Findings;

/// <summary>The choir of simulated seasons, and its logs folded.</summary>
internal static class SeasonChoir
{
    internal static readonly Choir Choir = new()
    {
        Name = "The Net Loft Singers",
        Parts =
        [
            Part("soprano", "C4-G5", "C4-F5", 0),
            Part("alto", "G3-D5", "G3-C5", 0),
            Part("tenor", "C3-A4", "C3-F4", -1),
            Part("bass", "F2-D4", "G2-C4", -1),
        ],
    };

    /// <summary>The same choir as a file.</summary>
    internal const string Yaml = """
        format: 1
        name: The Net Loft Singers
        parts:
          - {id: soprano, placement: 0, extreme: C4-G5, comfortable: C4-F5}
          - {id: alto, placement: 0, extreme: G3-D5, comfortable: G3-C5}
          - {id: tenor, placement: -1, extreme: C3-A4, comfortable: C3-F4}
          - {id: bass, placement: -1, extreme: F2-D4, comfortable: G2-C4}
        """;

    internal static IReadOnlyList<SungSession> Fold(Season season)
    {
        LineBook lines = new();
        return [.. season.Logs.Select((log, i) => SungSession.From($"evening-{i + 1}", log, Choir, SeasonPatterns.Exercises, lines))];
    }

    private static Part Part(string id, string extreme, string comfortable, int placement) => new(
        id, id, [id[..1]], [], 8, placement, new(PitchRangeText.Parse(extreme).Value, PitchRangeText.Parse(comfortable).Value));
}
