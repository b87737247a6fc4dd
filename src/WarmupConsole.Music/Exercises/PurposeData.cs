using System.Collections.Frozen;

namespace WarmupConsole.Music.Exercises;

/// <summary>One row per purpose: its name in files, and its words on screen.</summary>
public static class PurposeData
{
    private static readonly (Purpose Purpose, string Id, string Words)[] Rows =
    [
        (Purpose.ClosedToOpenVowels, "resonance.open", "from closed to open vowels"),
        (Purpose.EvenVowels, "resonance.even", "even vowels"),
        (Purpose.RepeatedPitch, "tuning.repeat", "repeated pitch"),
        (Purpose.ScaleMotion, "tuning.scale", "scale motion"),
        (Purpose.LeapThird, "tuning.third", "leaps of a third"),
        (Purpose.LeapFifth, "tuning.fifth", "leaps of a fifth"),
        (Purpose.LeapOctave, "tuning.octave", "leaps of an octave"),
        (Purpose.HalfSteps, "tuning.half-steps", "half-steps"),
        (Purpose.Sustained, "time.sustained", "sustained tones"),
        (Purpose.ShortToLong, "time.short-to-long", "short to long"),
        (Purpose.Slow, "time.slow", "slow motion"),
        (Purpose.Quick, "time.quick", "quick notes"),
        (Purpose.SoftToLoud, "loudness.soft-to-loud", "soft to loud"),
        (Purpose.Swell, "loudness.swell", "swell and fade"),
        (Purpose.Legato, "touch.legato", "legato"),
        (Purpose.Staccato, "touch.staccato", "staccato"),
        (Purpose.Simple, "form.simple", "a simple line"),
        (Purpose.Complex, "form.complex", "a complex line"),
        (Purpose.Chords, "ensemble.chords", "chords"),
        (Purpose.Canon, "ensemble.canon", "canon"),
        (Purpose.Drone, "ensemble.drone", "drone"),
        (Purpose.Blend, "ensemble.blend", "blend"),
    ];

    private static readonly FrozenDictionary<string, Purpose> ByFileName = Rows.ToFrozenDictionary(row => row.Id, row => row.Purpose);

    /// <summary>All names as files write them, in the order of the table.</summary>
    public static IReadOnlyList<string> Ids { get; } = [.. Rows.Select(row => row.Id)];

    /// <summary>The name of a purpose in files.</summary>
    public static string Id(Purpose purpose) => Rows[(int)purpose].Id;

    /// <summary>The purpose as a director reads it.</summary>
    public static string Words(Purpose purpose) => Rows[(int)purpose].Words;

    /// <summary>Finds a purpose by its name in files; false for any other text.</summary>
    public static bool TryFind(string id, out Purpose purpose) => ByFileName.TryGetValue(id, out purpose);
}
