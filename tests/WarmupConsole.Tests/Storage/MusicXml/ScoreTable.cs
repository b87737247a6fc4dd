using WarmupConsole.Storage.MusicXml;
using WarmupConsole.Tests.Architecture;

namespace WarmupConsole.Tests.Storage.MusicXml;

/// <summary>The scores under Scores, and the tables that an independent reader made of them (Scores/README.md).</summary>
internal static class ScoreTable
{
    internal static string Folder { get; } = Path.Combine(Repository.Root, "tests", "WarmupConsole.Tests", "Scores");

    internal static ScoreFile Read(string file) => MusicXmlFile.Read(Path.Combine(Folder, file));

    /// <summary>The rows of a table, each by the names of its columns.</summary>
    internal static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows(string table)
    {
        string[] lines = File.ReadAllLines(Path.Combine(Folder, table));
        string[] names = lines[0].Split(',');
        return [.. lines.Skip(1).Select(line => (IReadOnlyDictionary<string, string>)names.Zip(Cells(line)).ToDictionary(cell => cell.First, cell => cell.Second))];
    }

    private static string[] Cells(string line) =>
        [.. line.Split('"').SelectMany((piece, index) => index % 2 == 1 ? [piece.Replace(',', '\u0001')] : new[] { piece })
            .Aggregate("", (whole, piece) => whole + piece).Split(',').Select(cell => cell.Replace('\u0001', ','))];
}
