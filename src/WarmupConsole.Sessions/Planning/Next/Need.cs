using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>What one part needs work on.</summary>
/// <param name="Part">Id of the part.</param>
/// <param name="Kind">Id of the kind of mark.</param>
/// <param name="Tonic">Tonic of the key it was heard in, or null in a step without keys.</param>
/// <param name="Pitch">The sounding pitch when the marks say exactly one, else null: then the key is meant.</param>
/// <param name="ExerciseId">The exercise it was last heard in, or empty.</param>
/// <param name="Rungs">In how many rungs it was marked; 0 when the director asked for it.</param>
/// <param name="Words">"altos flat in E".</param>
/// <param name="Date">When it was heard.</param>
internal sealed record Need(string Part, string Kind, Pitch? Tonic, Pitch? Pitch, string ExerciseId, int Rungs, string Words, DateOnly Date)
{
    private const string Asked = "asked";
    private const int SoonDays = 14;

    /// <summary>The strongest that was said of it, or empty.</summary>
    internal string Strength { get; init; } = "";

    /// <summary>Of each part that it was heard of the pitch that was named, else the highest it may mean: a voice strains at the top first (common practice).</summary>
    internal IReadOnlyList<(string Part, Pitch? Pitch)> Tops { get; init; } = [];

    /// <summary>True when its last day is within two weeks.</summary>
    internal bool IsDueSoon { get; init; }

    /// <summary>True when the director asked for it; else it was heard.</summary>
    internal bool IsAsked => Kind == Asked;

    /// <summary>
    /// All needs of the last session, the most often marked first, then in the order in which they were marked; after them the
    /// pitches that the director asked for, part by part: a pitch asked for is evidence like a mark.
    /// </summary>
    internal static IReadOnlyList<Need> AllIn(NextPlanInput input) =>
    [
        .. Marked(input),
        .. from need in input.Needs
           where need.IsOpenOn(input.Date) && need.Pitch is not null && !MarkKindData.IsEffort(input.Choir, need.Kind)
           from part in need.PartsOf(input.Choir.Parts)
           where part.Range.Extreme.Contains(need.Pitch!.Value.Midi)
           select new Need(part.Id, Asked, null, need.Pitch, "", 0, (need with { Who = part.Id }).WordsIn(input.Choir.Notes), input.Date) { IsDueSoon = IsSoon(need, input.Date) },
    ];

    /// <summary>True when the last day of a wish is within two weeks.</summary>
    internal static bool IsSoon(ChoirNeed need, DateOnly day) => need.Until is { } until && until.DayNumber - day.DayNumber <= SoonDays;

    private static IEnumerable<Need> Marked(NextPlanInput input) => input.Review is not { } review
        ? []
        :
        [
            .. Together(
                input.Choir,
                review.Marks.Where(mark => mark is { Kind: not null, IsPraise: false, Part.Length: > 0 })
                    .GroupBy(mark => (mark.Part, mark.Kind, Pitch: OnlyPitch(mark)?.Midi, Key: OnlyPitch(mark) is null ? mark.Key?.Name : null))
                    .Select(marks => Of([.. marks], input.Choir, review)))
                .OrderByDescending(need => need.Rungs).ThenByDescending(need => StrengthData.Order(need.Strength)),
        ];

    /// <summary>What every part has in the same key is one need, worded for everyone and looked for where the highest part sings.</summary>
    private static IEnumerable<Need> Together(Choir choir, IEnumerable<Need> needs) => needs
        .GroupBy(need => (need.Kind, need.Tonic, need.Pitch))
        .SelectMany(same => choir.Parts.Count > 1 && choir.Parts.All(part => same.Any(need => need.Part == part.Id))
            ? [same.First() with { Words = MarkWords.Sentence(choir, [], MarkWords.What(choir, same.Key.Kind, same.First().Strength), MarkWords.Where(choir.Notes, same.Key.Pitch, "", same.Key.Tonic)), Tops = [.. same.SelectMany(need => need.Tops)] }]
            : same.AsEnumerable());

    private static Need Of(ReviewMark[] marks, Choir choir, SessionReview review)
    {
        ReviewMark last = marks[^1];
        Pitch? pitch = OnlyPitch(last);
        string strength = marks.MaxBy(mark => StrengthData.Order(mark.Strength))!.Strength;
        string words = MarkWords.Sentence(choir, [last.Part], MarkWords.What(choir, last.Kind!, strength), MarkWords.Where(choir.Notes, pitch, "", pitch is null ? last.Key : null));
        Pitch? tonic = review.Rungs.LastOrDefault(rung => rung.Step == last.Step && rung.Rung == last.Rung)?.Tonic ?? last.Key;
        string exercise = review.Steps.FirstOrDefault(step => step.Step == last.Step)?.ExerciseId ?? "";
        int rungs = marks.Select(mark => (mark.Step, mark.Rung)).Distinct().Count();
        return new(last.Part, last.Kind!, tonic, pitch, exercise, rungs, words, DateOnly.FromDateTime(review.Start.DateTime)) { Strength = strength, Tops = [(last.Part, pitch ?? marks.SelectMany(mark => mark.Pitches).Cast<Pitch?>().MaxBy(top => top?.Midi))] };
    }

    private static Pitch? OnlyPitch(ReviewMark mark) => mark.Pitches.Count == 1 ? mark.Pitches[0] : null;
}
