using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Findings.Exposure;
using WarmupConsole.Sessions.Findings.Practice;
using WarmupConsole.Tests.Sessions.Findings;
using WarmupConsole.Tests.Sessions.Findings.Seasons;
using WarmupConsole.Tui.Presentation.Reviewing;

namespace WarmupConsole.Tests.Tui;

/// <summary>A simulated season as the review screen shows it: the tenors are often flat at one pitch.</summary>
internal static class ReviewFixture
{
    internal static readonly ReviewModel Model = Make(SeasonChoir.Fold(SeasonSimulator.Make(new(1001, 6, 1, 0.40))));

    internal static readonly ReviewModel Empty = Make([]);

    private static Exercise Trained(Exercise exercise) => exercise.Id switch
    {
        "octave-leap" or "octave-arpeggio" => exercise with { Purposes = [Purpose.LeapOctave] },
        "one-note" => exercise with { Purposes = [Purpose.Sustained] },
        "triad" or "broken-thirds" => exercise with { Purposes = [Purpose.LeapThird, Purpose.Legato] },
        _ => exercise with { Purposes = [Purpose.ScaleMotion] },
    };

    private static ReviewModel Make(IReadOnlyList<SungSession> sessions)
    {
        ChoirFindings found = ChoirFindings.From(sessions, SeasonChoir.Choir);
        return new(
            SeasonChoir.Choir,
            $"What {sessions.Count} sessions show",
            sessions.Count == 0 ? "" : "The Net Loft Singers, 16 February 2027, 19:30 to 19:51, without a plan\n\nSteps\n   1  triad                             2:10  of it talk 0:31, 9 keys\n",
            found.Findings,
            found.Ranges,
            HeatTable.Of(SeasonChoir.Choir, found.Rates),
            Practised.In(sessions, [.. SeasonPatterns.Exercises.Values.Select(Trained)]),
            ["2027-01-12T19-30-00.jsonl: 1 place not read: the line does not match its checksum: it was changed."]);
    }
}
