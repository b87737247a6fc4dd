using System.Globalization;
using System.Text;
using WarmupConsole.Music.Repertoire.Mapping;
using WarmupConsole.Music.Repertoire.Places;
using WarmupConsole.Music.Repertoire.Words;
using WarmupConsole.Storage.MusicXml;

namespace WarmupConsole.Benchmarks;

/// <summary>Scores of a quarter of a megabyte to four, read and looked at: four parts with words, dynamics and leaps.</summary>
internal static class ScoreBenchmarks
{
    private const int Megabyte = 1_000_000;
    private const int Samples = 60;
    private static readonly string[] Parts = ["Soprano", "Alto", "Tenor", "Bass"];
    private static readonly int[] Octaves = [5, 4, 3, 3];
    private static readonly string[] Words = ["Ky", "ri", "e", "lei"];

    internal static IEnumerable<Benchmark> All => ((double[])[0.25, 0.5, 1, 2, 4]).Select(size =>
    {
        Lazy<byte[]> score = new(() => Make((int)(size * Megabyte)));
        return new Benchmark(string.Create(CultureInfo.InvariantCulture, $"score of {size} MB read and looked at"), 1, () => Look(score.Value)) { Samples = Samples };
    });

    /// <summary>Bytes held while a score is read and looked at, and taken in all, for each byte of its file.</summary>
    internal static (double Held, double Taken) Memory(double size)
    {
        byte[] score = Make((int)(size * Megabyte));
        Look(score);
        long before = GC.GetTotalMemory(forceFullCollection: true);
        long taken = GC.GetAllocatedBytesForCurrentThread();
        (object read, object look) = Looked(score);
        long all = GC.GetAllocatedBytesForCurrentThread() - taken;
        double held = GC.GetTotalMemory(forceFullCollection: true) - before;
        GC.KeepAlive((read, look));
        return (held / score.Length, all / (double)score.Length);
    }

    /// <summary>A score of about so many bytes.</summary>
    internal static byte[] Make(int bytes)
    {
        StringBuilder text = new("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<score-partwise version=\"4.0\">\n<part-list>\n");
        text.AppendJoin("", Parts.Select((name, part) => $"<score-part id=\"P{part + 1}\"><part-name>{name}</part-name></score-part>\n")).Append("</part-list>\n");
        int each = bytes / Parts.Length;
        for (int part = 0; part < Parts.Length; part++)
        {
            int until = text.Length + each;
            text.Append($"<part id=\"P{part + 1}\">\n");
            for (int bar = 1; text.Length < until; bar++)
            {
                Bar(text, part, bar);
            }

            text.Append("</part>\n");
        }

        return Encoding.UTF8.GetBytes(text.Append("</score-partwise>\n").ToString());
    }

    private static void Bar(StringBuilder text, int part, int bar)
    {
        text.Append($"  <measure number=\"{bar}\">\n");
        text.Append(bar == 1 ? "    <attributes><divisions>4</divisions><key><fifths>-1</fifths></key><time><beats>4</beats><beat-type>4</beat-type></time><clef><sign>G</sign><line>2</line></clef></attributes>\n    <direction><sound tempo=\"72\"/></direction>\n" : "");
        for (int note = 0; note < 4; note++)
        {
            char step = "CDEFGAB"[((bar * 3) + (note * 5) + part) % 7];
            text.Append($"    <note default-x=\"{80 + (note * 40)}\">\n      <pitch>\n        <step>{step}</step>\n        <octave>{Octaves[part]}</octave>\n      </pitch>\n      <duration>4</duration>\n      <voice>1</voice>\n");
            text.Append($"      <type>quarter</type>\n      <stem>up</stem>\n      <lyric number=\"1\">\n        <syllabic>single</syllabic>\n        <text>{Words[note]}</text>\n      </lyric>\n    </note>\n");
        }

        text.Append("  </measure>\n");
    }

    private static long Look(byte[] score) => Looked(score).Look.Lines.Sum(line => line.Passages.Count);

    private static (ScoreFile Read, ScoreLook Look) Looked(byte[] bytes)
    {
        ScoreFile read = MusicXmlFile.Parse("score.musicxml", bytes);
        return (read, ScoreLook.Of(read.Score!, ScoreMap.Guess(read.Score!, DemoChoir.Folder.Choir.Parts), new(false, LanguageVowels.For("la"), [])));
    }
}
