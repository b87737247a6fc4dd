using WarmupConsole.Music.Repertoire.Mapping;

namespace WarmupConsole.Music.Repertoire.Places;

/// <summary>What a score asks of a choir, line by line.</summary>
public sealed class ScoreLook
{
    private readonly Score score;
    private readonly LookQuestion question;
    private readonly Ensemble all;
    private readonly bool hasOthers;

    private ScoreLook(Score score, ScoreMap map, LookQuestion question)
    {
        (this.score, this.question, Clock) = (score, question, ScoreClock.Of(score, question.AsPlayed));
        (LineSinger Line, IReadOnlyList<IReadOnlyList<SungTone>> Tones)[] sung = [.. map.Sung.Select(line => (line, SungTones.Of(line.Line.Notes, Clock)))];
        (all, hasOthers) = (new(sung.SelectMany(line => line.Tones)), sung.Length > 1);
        Lines = [.. sung.Select(line => Look(line.Line, line.Tones, new(line.Tones)))];
    }

    /// <summary>The lines that the choir sings, in the order of the score.</summary>
    public IReadOnlyList<LineLook> Lines { get; }

    /// <summary>When its bars sound.</summary>
    public ScoreClock Clock { get; }

    /// <summary>Looks at every line that the map gives to a part.</summary>
    /// <param name="score">The score.</param>
    /// <param name="map">Who sings what.</param>
    /// <param name="question">What it is looked at with.</param>
    public static ScoreLook Of(Score score, ScoreMap map, LookQuestion question)
    {
        ArgumentNullException.ThrowIfNull(score);
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(question);
        return new(score, map, question);
    }

    /// <summary>The voices of a line that several sing from, each by itself and measured for the same part; none for a plain line.</summary>
    public IReadOnlyList<LineLook> VoicesOf(LineLook whole)
    {
        ArgumentNullException.ThrowIfNull(whole);
        IReadOnlyList<ScoreLine> voices = whole.Line.Voices();
        Ensemble own = new(voices.Count == 0 ? [] : SungTones.Of(whole.Line.Notes, Clock));
        return [.. voices.Select(voice => Look(new(voice, whole.Singer, MapGround.Director), SungTones.Of(voice.Notes, Clock), own))];
    }

    private LineLook Look(LineSinger line, IReadOnlyList<IReadOnlyList<SungTone>> voices, Ensemble own)
    {
        HashSet<int> weak = [.. question.WeakPitches.Where(weak => weak.Part == line.Singer!.Id).Select(weak => weak.Midi)];
        LineView view = new(line.Singer!.Range, question.Vowels, weak, all, own, hasOthers);
        Hardship[] hardships = [.. voices.SelectMany(tones => Hardships(tones, view))];
        double[] bars = new double[score.Bars.Count];
        foreach (Hardship hardship in hardships)
        {
            bars[hardship.Bar] += hardship.Points;
        }

        return new(
            line.Line,
            line.Singer,
            NoteRange.Of(line.Line.Notes),
            Tessitura.Of(Clock.AsSung(line.Line.Notes)),
            RangeTime.Of(voices.SelectMany(tones => tones), view.Range),
            hardships,
            bars,
            Passages.Find(hardships, bars));
    }

    private static IEnumerable<Hardship> Hardships(IReadOnlyList<SungTone> tones, LineView view) =>
        [.. tones.SelectMany(tone => PitchHardships.Of(tone, view)), .. MotionHardships.Of(tones, view), .. BreathHardships.Of(tones, view)];
}
