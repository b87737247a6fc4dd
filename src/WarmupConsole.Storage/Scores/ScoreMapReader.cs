using WarmupConsole.Music.Repertoire;
using WarmupConsole.Music.Repertoire.Mapping;
using WarmupConsole.Music.Voices;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Scores;

/// <summary>Reads the lines of a mapping file and looks them up in the score and the choir.</summary>
internal sealed class ScoreMapReader(Score? score, IReadOnlyList<Part> parts)
{
    private readonly IReadOnlyList<ScoreLine> whole = score is null ? [] : ScoreLine.Whole(score);
    private readonly Dictionary<string, int> seen = [];
    private readonly Dictionary<(string Key, string Voice), LineSinger> read = [];

    internal void Read(MapReader fields)
    {
        string key = fields.Text("score");
        string voice = fields.Text("voice", "");
        fields.Text("name", "");
        Part? singer = Singer(fields);
        fields.Finish();
        UniqueCheck.Add(seen, fields, "score", voice.Length == 0 ? key : $"{key}, voice {voice}");
        if (score is not null && key.Length > 0 && Line(fields, key, voice) is { } line)
        {
            read[(key, voice)] = new(line, singer, MapGround.Director);
        }
    }

    /// <summary>In the order of the score; parts that the file does not name are guessed.</summary>
    internal ScoreMap Finish()
    {
        if (score is null)
        {
            return new([]);
        }

        ILookup<string, LineSinger> told = read.Values.ToLookup(singer => singer.Line.Key);
        ILookup<string, LineSinger> guessed = ScoreMap.Guess(score, parts).Lines.ToLookup(singer => singer.Line.Key);
        return new([.. whole.SelectMany(line => told.Contains(line.Key) ? told[line.Key] : guessed[line.Key])]);
    }

    private ScoreLine? Line(MapReader fields, string key, string voice)
    {
        if (whole.FirstOrDefault(line => line.Key == key) is not { } part)
        {
            fields.Problems.Add(fields.Find("score")!, StorageTexts.NoScorePart(key, whole.Select(line => line.Key)));
            return null;
        }

        if (voice.Length == 0)
        {
            return part;
        }

        IReadOnlyList<ScoreLine> voices = part.Voices();
        ScoreLine? line = voices.FirstOrDefault(line => line.Voice == voice);
        if (line is null)
        {
            fields.Problems.Add(fields.Find("voice")!, StorageTexts.NoScoreVoice(voice, voices.Select(line => line.Voice)));
        }

        return line;
    }

    private Part? Singer(MapReader fields)
    {
        string id = fields.Id("part");
        Part? singer = parts.FirstOrDefault(part => part.Id == id);
        if (singer is null && id.Length > 0 && id != ScoreMapFields.None)
        {
            fields.Problems.Add(fields.Find("part")!, StorageTexts.UnknownLimit(id, [.. parts.Select(part => part.Id), ScoreMapFields.None]));
        }

        return singer;
    }
}
