using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Findings;

/// <summary>Evidence that a comfortable limit of a part should move. Nothing moves before the director accepts it.</summary>
/// <param name="Part">Id of the part.</param>
/// <param name="IsTop">True for the upper limit, false for the lower.</param>
/// <param name="IsWider">True when the range grows.</param>
/// <param name="Proposed">The part's ranges with the limit moved; the extreme range stays as it is.</param>
/// <param name="Evidence">Every pitch that speaks for it, from the present limit on.</param>
public sealed record RangeAdvice(string Part, bool IsTop, bool IsWider, VoiceRange Proposed, IReadOnlyList<PitchEvidence> Evidence)
{
    /// <summary>The ranges with all limits moved that several pieces of advice on one part move.</summary>
    /// <param name="advice">On one part; at least one.</param>
    public static VoiceRange Together(IReadOnlyList<RangeAdvice> advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        PitchRange low = (advice.FirstOrDefault(one => !one.IsTop) ?? advice[0]).Proposed.Comfortable;
        PitchRange high = (advice.FirstOrDefault(one => one.IsTop) ?? advice[0]).Proposed.Comfortable;
        return advice[0].Proposed with { Comfortable = new(low.Low, high.High) };
    }
}
