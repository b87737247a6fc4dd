namespace WarmupConsole.Music.Exercises;

/// <summary>
/// One row per purpose: what an exercise must ask for to serve it, in words and as a rule over what is computed from it. So a
/// stated purpose can be verified, and a new exercise can be offered the purposes that it serves. (The limits are ours.)
/// </summary>
public static class PurposeRules
{
    private const double SustainedSeconds = 3;
    private const double BreathSeconds = 6;
    private const double QuickNotesPerSecond = 3;
    private const double SlowNotesPerSecond = 1.5;
    private const double CalmNotesPerSecond = 2;
    private const int QuickCountsPerMinute = 76;
    private const int SlowCountsPerMinute = 66;
    private const int Mezzoforte = 3;

    private static readonly Row[] Rows =
    [
        new(Purpose.ClosedToOpenVowels, "a vowel that opens by half the IPA chart or more", Any(LineRules.Opens)),
        new(Purpose.EvenVowels, "three changes of vowel on steps no wider than a third", Any(LineRules.ChangesVowel)),
        new(Purpose.RepeatedPitch, "a note sung again at once, or one pitch three times", Any(LineRules.Repeats)),
        new(Purpose.ScaleMotion, "two steps in one direction, and steps in half of its moves", Any(LineRules.RunsInSteps)),
        new(Purpose.LeapThird, "a leap of a third", Any(line => LineRules.Leaps(line, 3, 4))),
        new(Purpose.LeapFifth, "a leap of a fifth", Any(line => LineRules.Leaps(line, 7, 7))),
        new(Purpose.LeapOctave, "a leap of an octave", Any(line => LineRules.Leaps(line, 12, 12))),
        new(Purpose.HalfSteps, "two half-steps, or one into the last note", Any(LineRules.HasHalfSteps)),
        new(Purpose.Sustained, "a tone of three seconds, or six seconds of breathing out", facts => facts.Figures.LongestToneSeconds >= SustainedSeconds, facts => facts.Figures.LongestPhraseSeconds >= BreathSeconds),
        new(Purpose.ShortToLong, "notes half as long again in its second half, or breaths out that grow", Any(LineRules.Lengthens), facts => PhaseRules.BreathsGrow(facts.Exercise)),
        new(Purpose.Slow, "at most three notes in two seconds, or counts at 66 or slower", facts => facts.Figures.NotesPerSecond <= SlowNotesPerSecond, facts => facts.CountsPerMinute <= SlowCountsPerMinute),
        new(Purpose.Quick, "three notes a second, or counts at 76 or quicker", facts => facts.Figures.NotesPerSecond >= QuickNotesPerSecond, facts => facts.CountsPerMinute >= QuickCountsPerMinute),
        new(Purpose.SoftToLoud, "loudness that grows by two words and never falls", facts => LoudnessRules.Grows(facts.Figures.LoudnessCourse)),
        new(Purpose.Swell, "loudness that grows by two words and comes back", facts => LoudnessRules.Swells(facts.Figures.LoudnessCourse)),
        new(Purpose.Legato, "three notes or more, joined without a rest", facts => facts.Exercise.Articulation is Articulation.Legato or Articulation.Glide && facts.Lines.Any(LineRules.IsJoined)),
        new(Purpose.Staccato, "staccato, or three short notes before rests", facts => facts.Exercise.Articulation == Articulation.Staccato || facts.Lines.Any(LineRules.IsDetached)),
        new(Purpose.Simple, "a complexity of 8 at most", facts => facts.Figures.Complexity <= Complexity.Simple, facts => facts.Figures.Complexity <= Complexity.Simple),
        new(Purpose.Complex, "a complexity of 9 or more", facts => facts.Figures.Complexity > Complexity.Simple, facts => facts.Figures.Complexity > Complexity.Simple),
        new(Purpose.Chords, "three tones at once, or one after the other for two beats each", EnsembleRules.BuildsChords),
        new(Purpose.Canon, "a line that follows another with the same moves, or one chord throughout and two beats of rest at the end", EnsembleRules.IsCanon),
        new(Purpose.Drone, "a line on one pitch under another, or one chord throughout; at most two notes a second", facts => EnsembleRules.HasDrone(facts) && facts.Figures.NotesPerSecond <= CalmNotesPerSecond),
        new(Purpose.Blend, "never louder than mf, at most two notes a second", facts => facts.Figures.LoudnessCourse.Max() <= Mezzoforte && facts.Figures.NotesPerSecond <= CalmNotesPerSecond),
    ];

    /// <summary>What an exercise must ask for to serve a purpose, as a director reads it.</summary>
    public static string Asks(Purpose purpose) => Rows[(int)purpose].Asks;

    /// <summary>True when what is computed from the exercise bears the purpose out, whether it is stated there or not.</summary>
    public static bool Serves(Exercise exercise, Purpose purpose) => Serves(new PurposeFacts(exercise), Rows[(int)purpose]);

    /// <summary>All purposes that the exercise serves, in the order of the table.</summary>
    public static IReadOnlyList<Purpose> Served(Exercise exercise)
    {
        PurposeFacts facts = new(exercise);
        return [.. Rows.Where(row => Serves(facts, row)).Select(row => row.Purpose)];
    }

    private static bool Serves(PurposeFacts facts, Row row) => facts.Exercise.IsSung ? row.Sung(facts) : row.Counted?.Invoke(facts) == true;

    private static Func<PurposeFacts, bool> Any(Func<SungLine, bool> rule) => facts => facts.Lines.Any(rule);

    /// <summary>A purpose without a rule for counted phases cannot be served by them.</summary>
    private sealed record Row(Purpose Purpose, string Asks, Func<PurposeFacts, bool> Sung, Func<PurposeFacts, bool>? Counted = null);
}
