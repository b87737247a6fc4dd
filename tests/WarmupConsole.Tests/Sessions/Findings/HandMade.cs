using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Findings.Exposure;
using WarmupConsole.Tests.Sessions.Findings.Seasons;
using WarmupConsole.Tests.Sessions.Review;

namespace WarmupConsole.Tests.Sessions.Findings;

/// <summary>Evenings of a few ladders in which a rule says what is marked.</summary>
internal static class HandMade
{
    private static readonly string[] Tonics = ["C4", "Db4", "D4", "Eb4", "E4", "F4", "Gb4", "G4"];

    /// <param name="evenings">How many.</param>
    /// <param name="exercises">Ids of season exercises; each is led through eight keys from C4.</param>
    /// <param name="marked">The mark of an evening, an exercise and a tonic (MIDI number), or null.</param>
    internal static ChoirFindings Findings(int evenings, string[] exercises, Func<(int Evening, string Exercise, int Tonic), SampleMark?> marked) =>
        ChoirFindings.From(Sessions(evenings, exercises, marked), SeasonChoir.Choir);

    internal static IReadOnlyList<SungSession> Sessions(int evenings, string[] exercises, Func<(int Evening, string Exercise, int Tonic), SampleMark?> marked)
    {
        LineBook lines = new();
        return [.. Enumerable.Range(0, evenings).Select(evening => SungSession.From(
            $"evening-{evening + 1}", Log(evening, exercises, marked).Records, SeasonChoir.Choir, SeasonPatterns.Exercises, lines))];
    }

    /// <summary>"a f", with the key named, so that there is no doubt about the rung.</summary>
    internal static SampleMark Flat(int tonic, int? pitch = null, string kind = "flat") =>
        new(0, 0, 0, "a f", ["alto"], kind, Tonics[tonic - 60][..^1], Named: true, Pitch: pitch);

    /// <summary>Does the alto, who sings at the written pitch, sing this pitch in this key?</summary>
    internal static bool Sings(string exercise, int tonic, int midi) =>
        SeasonPatterns.Rows.Single(row => row.Id == exercise).Semitones.Contains(midi - tonic);

    private static SampleLog Log(int evening, string[] exercises, Func<(int Evening, string Exercise, int Tonic), SampleMark?> marked)
    {
        SampleLog log = new SampleLog().Started();
        int id = 1;
        foreach ((int step, string exercise) in exercises.Index())
        {
            log.After(20, new StepStarted(step, exercise, []));
            int span = SeasonPatterns.Rows.Single(row => row.Id == exercise).Semitones.Max();
            foreach ((int rung, string tonic) in Tonics.Index())
            {
                log.Rung(step, rung, tonic, span);
                if (marked((evening, exercise, 60 + rung)) is { } mark)
                {
                    log.Mark(mark with { Id = id++, Step = step, Rung = rung });
                }
            }
        }

        return log;
    }
}
