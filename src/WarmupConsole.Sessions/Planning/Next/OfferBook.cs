using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Planning.Choosing;
using WarmupConsole.Sessions.Planning.Rules;
using WarmupConsole.Sessions.Planning.Seasons;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Everything that the next plan may be made of, in the order in which a plan has it.</summary>
internal sealed class OfferBook
{
    /// <summary>Of a large collection only so many exercises of a stage are looked at closely, those that promise most by what they train.</summary>
    private const int MostExercises = 150;
    private const int MostOfStage = 24;
    private const int MostSung = 60;

    private readonly NextPlanInput _input;
    private readonly History _history;
    private readonly SeasonTarget _season;
    private readonly OwnValue _own;
    private readonly StepVariants _variants;
    private readonly Dictionary<string, int> _numbers;

    internal OfferBook(NextPlanInput input)
    {
        _input = input;
        _history = new(input);
        _season = SeasonTarget.On(input.Date, input.Choir.Concerts);
        Approach approach = new(input.Choir);
        Sparings = new(input, approach);
        _own = new(input, _history, _season);
        Wishes = new Wishes(input, _history, approach, Sparings).All();
        _variants = new(input, _season, approach, Wishes) { Spared = Sparings.Parts };
        _numbers = input.Exercises.Keys.Order(StringComparer.Ordinal).Index().ToDictionary(id => id.Item, id => id.Index);
    }

    internal IReadOnlyList<Wish> Wishes { get; }

    internal Sparings Sparings { get; }

    internal SeasonTarget Season => _season;

    internal History History => _history;

    /// <summary>Every sound variant of every exercise that is worth looking at. Exercises do not depend on each other: each core takes some, and their order stays.</summary>
    /// <remarks>The parallel SelectMany unfolds into ever new types, which native code cannot hold.</remarks>
    internal IEnumerable<Offer> All() => WorthLookingAt().AsParallel().AsOrdered().Select(OffersOf).AsEnumerable().SelectMany(offers => offers);

    /// <summary>A step as it stands in a plan, sound or not.</summary>
    internal Offer Of(PlanStep step)
    {
        Exercise exercise = _input.Exercises[step.ExerciseId];
        return Make(step, exercise, Difficulty.Of(exercise));
    }

    private IEnumerable<Exercise> WorthLookingAt()
    {
        Exercise[] all = [.. _input.Exercises.Values.OrderBy(exercise => exercise.Id, StringComparer.Ordinal)];
        return all.Length <= MostExercises ? all : all
            .GroupBy(exercise => exercise.Stage)
            .SelectMany(stage => stage
                .OrderByDescending(exercise => _history.IsInLast(exercise.Id)).ThenByDescending(Promise)
                .Take(stage.Key == Stage.Sung ? MostSung : MostOfStage));
    }

    /// <summary>What it trains and what it is worth by itself, before any ladder is built.</summary>
    private int Promise(Exercise exercise) =>
        Wishes.Where(wish => wish.Kind == WishKind.Purpose).Zip(Enum.GetValues<Purpose>()).Sum(pair => exercise.Purposes.Contains(pair.Second) ? pair.First.Points[0] : 0)
        + _own.Of(exercise, Difficulty.Of(exercise)).Sum(own => own.Points);

    private Offer[] OffersOf(Exercise exercise)
    {
        PlanStep step = Settled(exercise);
        Difficulty difficulty = Difficulty.Of(exercise);
        return [.. _variants.Of(step, exercise).Distinct().Select(variant => Make(variant, exercise, difficulty)).Where(IsSound)];
    }

    private bool IsSound(Offer offer) => Soundness.IsGiven(new(_input.Choir, new() { Steps = [offer.Step] }, [offer.Ready]));

    /// <summary>Tempo, talk and piano, which do not depend on the keys.</summary>
    private PlanStep Settled(Exercise exercise) => new()
    {
        ExerciseId = exercise.Id,
        TalkSeconds = _history.IsNew(exercise.Id) ? NewTalk.Seconds(exercise)
            : _input.LearntTalk.TryGetValue(exercise.Id, out int learnt) && learnt != exercise.TalkSeconds ? learnt : null,
        Tempo = StepTempo.For(exercise, _input, _history, _season),
        Piano = _input.Last?.Steps.FirstOrDefault(step => step.ExerciseId == exercise.Id)?.Piano ?? PianoWish.None,
    };

    private Offer Make(PlanStep step, Exercise exercise, Difficulty difficulty)
    {
        WarmupStep ready = WarmupBuilder.Build(_input.Choir, new() { Steps = [step] }, _input.Exercises).Steps[0];
        bool isPeak = step.Keys.ReachPercent > 0 && ExtremesLateRule.HasExtremes(ready);
        Sparing[] crossed = [.. Sparings.CrossedBy(ready)];
        OwnPoints[] own = [.. _own.Of(exercise, difficulty), .. _own.Of(ready, isPeak), .. crossed.Select(one => new OwnPoints(PlanPoints.CrossedKey * Math.Min(PlanPoints.MostCrossedKeys, one.KeysCrossedBy(ready)), NextPlanTexts.Crosses(one)))];
        FirstVowel first = FirstVowelOf(exercise);
        Band band = BandOf(exercise);
        return new(step, ready, own)
        {
            IsCrossing = crossed.Length > 0,
            IsOverstraining = Array.Exists(crossed, one => one.IsOverstrainedBy(ready)),
            Order = new(band, exercise.Stage, isPeak, first, difficulty.Demand, exercise.Id),
            Choice = new()
            {
                Exercise = _numbers[exercise.Id],
                Band = band,
                Milliseconds = (int)Math.Ceiling(ready.Planned.TotalMilliseconds),
                Own = own.Sum(points => points.Points),
                Aims = [.. Enumerable.Range(0, Wishes.Count).Where(wish => Wishes[wish].IsServedBy(ready))],
                FirstVowel = first,
                IsNew = _history.IsNew(exercise.Id),
                IsPeak = isPeak,
            },
        };
    }

    private FirstVowel FirstVowelOf(Exercise exercise)
    {
        string[] vowels = [.. ClosedVowelFirstRule.FirstVowels(_input.Choir, exercise)];
        return vowels.Length == 0 ? FirstVowel.None : Array.Exists(vowels, ClosedVowelFirstRule.IsOpen) ? FirstVowel.Open : FirstVowel.Closed;
    }

    private static Band BandOf(Exercise exercise) => exercise.Stage switch
    {
        Stage.Body => Band.Body,
        Stage.Breathing => Band.Breathing,
        Stage.Humming or Stage.LipTrill => Band.HalfClosed,
        Stage.Slide => Band.Slide,
        Stage.Sung => Band.Sung,
        _ => Band.Settling,
    };
}
