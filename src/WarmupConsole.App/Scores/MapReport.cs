using System.Text.Json;
using WarmupConsole.App.Reports;
using WarmupConsole.Music.Repertoire.Mapping;
using WarmupConsole.Storage.Scores;

namespace WarmupConsole.App.Scores;

/// <summary>Who sings what as <c>warmup score map --json</c> prints it.</summary>
internal sealed record MapReport(IReadOnlyList<MapReport.MapRow> Lines, string Written)
{
    internal static MapReport From(ScoreMap map, string path) =>
        new([.. map.Lines.Select(line => new MapRow(line.Line.Key, line.Line.Voice.Length == 0 ? null : line.Line.Voice, line.Line.Part.Name, line.Singer?.Id ?? ScoreMapFields.None))], path);

    internal string ToJson() => JsonSerializer.Serialize(this, ReportJson.Default.MapReport);

    /// <summary>The fields of the mapping file.</summary>
    internal sealed record MapRow(string Score, string? Voice, string Name, string Part);
}
