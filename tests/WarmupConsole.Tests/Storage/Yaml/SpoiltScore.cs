using System.IO.Compression;
using System.Text;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Repertoire.Drills;
using WarmupConsole.Music.Repertoire.Mapping;
using WarmupConsole.Music.Repertoire.Places;
using WarmupConsole.Music.Repertoire.Words;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Storage.Choirs;
using WarmupConsole.Storage.MusicXml;
using WarmupConsole.Storage.Yaml;
using WarmupConsole.Tests.Architecture;

namespace WarmupConsole.Tests.Storage.Yaml;

/// <summary>Scores to be spoilt, as text and in their container: what is still usable is mapped, looked at in played order, and drilled.</summary>
internal static class SpoiltScore
{
    private static readonly Choir QuayChoir = ChoirFile.Read("choir.yaml", File.ReadAllBytes(Path.Combine(Repository.Root, "plans-demo", "choir.yaml"))).Value!;

    private static readonly string[] Texts =
    [
        Score("made/edge-cases.musicxml"),
        Score("mit/42a-MultiVoice-TwoVoicesOnStaff-Lyrics.xml"),
        Score("mit/45b-RepeatWithAlternatives.xml"),
        Score("mit/24a-GraceNotes.xml"),
    ];

    internal static IReadOnlyList<SpoiltFile> Kinds { get; } =
    [
        new("a score", Texts, bytes => Use("f.musicxml", bytes)),
        new("a compressed score", [], bytes => Use("f.mxl", bytes)) { Packed = [.. Texts.Select(Pack), File.ReadAllBytes(PathOf("mit/90a-Compressed-MusicXML.mxl"))] },
    ];

    private static string PathOf(string name) => Path.Combine(Repository.Root, "tests", "WarmupConsole.Tests", "Scores", name);

    private static string Score(string name) => File.ReadAllText(PathOf(name));

    private static byte[] Pack(string score)
    {
        using MemoryStream held = new();
        using (ZipArchive zip = new(held, ZipArchiveMode.Create))
        {
            Add(zip, "META-INF/container.xml", "<container><rootfiles><rootfile full-path=\"score.xml\"/></rootfiles></container>");
            Add(zip, "score.xml", score);
        }

        return held.ToArray();
    }

    private static void Add(ZipArchive zip, string name, string text)
    {
        using Stream stream = zip.CreateEntry(name).Open();
        stream.Write(Encoding.UTF8.GetBytes(text));
    }

    private static IReadOnlyList<FileProblem> Use(string file, byte[] bytes)
    {
        ScoreFile read = MusicXmlFile.Parse(file, bytes);
        if (read.Score is not { } score)
        {
            Assert.NotEmpty(read.Problems);
            return read.Problems;
        }

        ScoreMap map = ScoreMap.Guess(score, QuayChoir.Parts);
        ScoreLook look = ScoreLook.Of(score, map, new(true, LanguageVowels.For("la"), [new("alto", 67)]));
        foreach (LineLook line in look.Lines)
        {
            Assert.All(line.BarPoints, points => Assert.InRange(points, 0, 1e9));
            look.VoicesOf(line);
            if (score.Bars.Count > 0 && DrillMaker.Make(score, new(line, 0, score.Bars.Count - 1, false, null, QuayChoir.Parts), look.Clock).Drill is { } drill)
            {
                Assert.Equal(PatternText.Write(drill.Pattern), PatternText.Write(PatternText.Parse(PatternText.Write(drill.Pattern), drill.Mode).Value!));
            }
        }

        return read.Problems;
    }
}
