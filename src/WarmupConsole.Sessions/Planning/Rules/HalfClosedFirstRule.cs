using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>Humming, a lip trill or another half-closed sound comes before full singing (common practice).</summary>
internal sealed class HalfClosedFirstRule : IPlanRule
{
    public string Name => "half-closed-first";

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        (int step, Exercise? exercise) = warmup.FirstWhere(exercise => exercise.Stage == Stage.Sung || IsHalfClosed(exercise));
        if (exercise is not null && !IsHalfClosed(exercise))
        {
            yield return new(PlanSeverity.Error, Name, step, PlanTexts.SingsBeforeHalfClosed(step, exercise));
        }
    }

    internal static bool IsHalfClosed(Exercise exercise) => exercise.Stage is Stage.Humming or Stage.LipTrill
        || (exercise.Pattern is { } pattern && VowelData.IsHalfClosed(pattern.FirstVowel()));
}
