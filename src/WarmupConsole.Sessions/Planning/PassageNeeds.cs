using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Repertoire.Places;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Planning;

/// <summary>What to work on for a passage of a score, as needs.</summary>
public static class PassageNeeds
{
    /// <summary>More than this at once no warm-up answers.</summary>
    private const int Most = 4;
    private const int FromSixth = 8;
    private const int FromFourth = 5;

    /// <summary>The heaviest reasons first: a pitch where a pitch is hard, else what trains it. Without any reason the region of the notes.</summary>
    /// <param name="passage">The bars.</param>
    /// <param name="region">Lowest and highest note of the part in them.</param>
    /// <param name="origin">Part, piece, bars and last day, for every need.</param>
    public static IReadOnlyList<ChoirNeed> Of(Passage passage, PitchRange region, ChoirNeed origin)
    {
        ArgumentNullException.ThrowIfNull(passage);
        ArgumentNullException.ThrowIfNull(origin);
        return passage.Hardships.Count == 0
            ? [origin with { Region = region }]
            : [.. passage.Hardships.Select(hardship => Of(hardship, origin)).DistinctBy(need => (need.Pitch?.Midi, need.Purpose)).Take(Most)];
    }

    private static ChoirNeed Of(Hardship hardship, ChoirNeed origin) => hardship.Reason switch
    {
        HardReason.LargeLeap or HardReason.DissonantLeap => origin with { Purpose = OfLeap((int)hardship.Amount) },
        HardReason.LongPhrase => origin with { Purpose = Purpose.Sustained },
        HardReason.QuickNotes => origin with { Purpose = Purpose.Quick },
        HardReason.ChromaticRun => origin with { Purpose = Purpose.HalfSteps },
        _ => origin with { Pitch = hardship.Pitch },
    };

    private static Purpose OfLeap(int semitones) => semitones switch
    {
        >= FromSixth => Purpose.LeapOctave,
        >= FromFourth => Purpose.LeapFifth,
        _ => Purpose.LeapThird,
    };
}
