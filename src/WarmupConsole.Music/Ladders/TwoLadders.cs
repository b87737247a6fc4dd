using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Music.Ladders;

/// <summary>A choir divided in two where few keys fit everyone: the lower voices from a lower key first, then the higher ones.</summary>
internal sealed record TwoLadders(IReadOnlyList<PartKeys> Lower, KeyWindow LowerKeys, IReadOnlyList<PartKeys> Higher, KeyWindow HigherKeys)
{
    /// <summary>Divides at the widest gap between the lowest keys of the parts; null when that wins nothing.</summary>
    internal static TwoLadders? Find(IReadOnlyList<PartKeys> parts)
    {
        PartKeys[] ordered = [.. parts.OrderBy(keys => keys.Allowed.Low)];
        int cut = Enumerable.Range(1, ordered.Length - 1).MaxBy(i => ordered[i].Allowed.Low - ordered[i - 1].Allowed.Low);
        (PartKeys[] lower, PartKeys[] higher) = (ordered[..cut], ordered[cut..]);
        (KeyWindow lowerKeys, KeyWindow higherKeys) = (Common(lower), Common(higher));
        int together = Common(ordered).Count;
        return lowerKeys.Count > together && higherKeys.Count > together
            ? new(lower, lowerKeys, higher, higherKeys)
            : null;
    }

    /// <summary>As it is told to others, with the tonics spelled: the low voices from their lowest key, the high ones from middle C or near it.</summary>
    internal LadderOffer Spelled(KeyFit fit) => new(
        Half(fit, Lower, LowerKeys, LowerKeys.Low),
        Half(fit, Higher, HigherKeys, HigherKeys.Nearest(Pitch.MiddleC.Midi)));

    private static LadderHalf Half(KeyFit fit, IReadOnlyList<PartKeys> parts, KeyWindow keys, int start) =>
        new([.. parts.Select(part => part.Part)], fit.Tonic(keys.Low), fit.Tonic(keys.High), fit.Tonic(start));

    private static KeyWindow Common(PartKeys[] parts) => parts.Select(keys => keys.Allowed).Aggregate((a, b) => a.And(b));
}
