using System.Text;
using WarmupConsole.Music.Repertoire.Mapping;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Scores;

/// <summary>Who sings what, for a director to confirm.</summary>
internal static class MapText
{
    internal static string Write(string title, ScoreMap map)
    {
        int line = map.Lines.Max(row => row.Line.Title.Length);
        int singer = map.Lines.Max(row => Singer(row).Length);
        StringBuilder text = new(Printable.Line(ScoreTexts.MapHead(title)) + "\n");
        foreach (LineSinger row in map.Lines)
        {
            text.Append(Printable.Line(ScoreTexts.MapRow(row.Line.Title.PadRight(line), Singer(row).PadRight(singer), Ground(row.Ground)))).Append('\n');
        }

        return text.ToString();
    }

    private static string Singer(LineSinger row) => row.Singer?.Id ?? ScoreTexts.LeftOut;

    private static string Ground(MapGround ground) => ground switch
    {
        MapGround.Name => ScoreTexts.ByName,
        MapGround.ClefAndTessitura => ScoreTexts.ByTessitura,
        MapGround.Accompaniment => ScoreTexts.IsAccompaniment,
        _ => ScoreTexts.AsSaid,
    };
}
