using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Repertoire.Places;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Repertoire.Drills;

/// <summary>Cuts a drill out of a score.</summary>
public static class DrillMaker
{
    private const int SlowPercent = 75;
    private const string UsualLoudness = "mf";

    /// <summary>The drill, or why there is none.</summary>
    /// <param name="score">The score.</param>
    /// <param name="question">Which bars, and how.</param>
    /// <param name="clock">When the bars stand, each once.</param>
    public static (Drill? Drill, DrillRefusal? Refusal) Make(Score score, DrillQuestion question, ScoreClock clock)
    {
        ArgumentNullException.ThrowIfNull(score);
        ArgumentNullException.ThrowIfNull(question);
        IReadOnlyList<SungTone> tones = DrillLine.Tones(question, clock);
        if (tones.Count == 0)
        {
            return (null, DrillRefusal.NothingSung);
        }

        LocalKey key = LocalKey.Of(question.Look.Line.Part.KeyAt(question.From), tones.Select(tone => tone.High));
        Pattern pattern = DrillLine.Of(tones, key, question);
        return pattern.Notes.Count > PatternText.MostNotes ? (null, DrillRefusal.TooLong) : Led(score, question, tones, (key, pattern));
    }

    private static (Drill? Drill, DrillRefusal? Refusal) Led(Score score, DrillQuestion question, IReadOnlyList<SungTone> tones, (LocalKey Key, Pattern Pattern) line)
    {
        Pitch tonic = line.Key.Tonic.Octaves(-question.Look.Singer.PlacementOctaves);
        Tempo tempo = score.TempoAt(tones[0].Bar, Beats.Zero) ?? (score.Tempos.Count > 0 ? score.Tempos[0].Tempo : Tempo.FromBeatsPerMinute(ScoreClock.UsualBeatsPerMinute));
        Tempo slow = Tempo.Clamp(tempo.MilliBeatsPerMinute * SlowPercent / 100 / 1000 * 1000);
        Exercise exercise = new() { Id = "drill", Title = "", Stage = Stage.Sung, Tempo = new(slow, slow, tempo), Pattern = line.Pattern, Mode = line.Key.Mode };
        return new DrillLadder(exercise, question.Look.Singer, question.Choir).Find(tonic, IsLow(question)) is var (keys, arrives)
            ? (new(line.Pattern, line.Key.Mode, tonic, keys, slow, tempo, Loudness(tones), arrives), null)
            : (null, DrillRefusal.BeyondThePart);
    }

    /// <summary>Low where what is hard about it lies below comfortable and not above.</summary>
    private static bool IsLow(DrillQuestion question)
    {
        HardReason[] reasons = [.. question.Look.Between(question.From, question.To).Hardships.Select(hardship => hardship.Reason)];
        return reasons.Contains(HardReason.BelowComfortable) && !reasons.Contains(HardReason.AboveComfortable);
    }

    /// <summary>That of the beginning, and of the end where it differs.</summary>
    private static IReadOnlyList<string> Loudness(IReadOnlyList<SungTone> tones) =>
        [.. ((int?[])[tones[0].Loudness, tones[^1].Loudness]).OfType<int>().Distinct().Select(order => DynamicsData.Words[order]).DefaultIfEmpty(UsualLoudness)];
}
