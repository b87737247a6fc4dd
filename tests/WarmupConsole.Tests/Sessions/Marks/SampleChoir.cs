using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Tests.Sessions.Marks;

/// <summary>Four parts with usual amateur ranges and one kind of mark of their own.</summary>
internal static class SampleChoir
{
    internal static Choir Four { get; } = new()
    {
        Name = "The Lantern Quay Singers",
        Parts =
        [
            Part("soprano", ["s", "sop", "sopranos"], "women", 0, ("C4", "A5", "D4", "F5")),
            Part("alto", ["a", "altos"], "women", 0, ("F3", "E5", "A3", "C5")),
            Part("tenor", ["t", "tenors"], "men", -1, ("C3", "A4", "D3", "F4")),
            Part("bass", ["b", "basses"], "men", -1, ("E2", "E4", "G2", "C4")),
        ],
        OwnMarkKinds = [new("swallowed", "swallowed", ["swallowing", "sw"], false)],
    };

    /// <summary>With the sopranos divided; both halves answer to "s".</summary>
    internal static Choir Divided { get; } = Four with
    {
        Parts =
        [
            Four.Parts[0] with { Id = "soprano-1", Name = "Soprano 1", Letters = ["s", "s1"] },
            Four.Parts[0] with { Id = "soprano-2", Name = "Soprano 2", Letters = ["s", "s2"] },
            .. Four.Parts.Skip(1),
        ],
    };

    private static Part Part(string id, string[] letters, string group, int placement, (string Low, string High, string ComfortLow, string ComfortHigh) range) => new(
        id,
        char.ToUpperInvariant(id[0]) + id[1..],
        letters,
        [group],
        8,
        placement,
        new(new(Pitch.Parse(range.Low), Pitch.Parse(range.High)), new(Pitch.Parse(range.ComfortLow), Pitch.Parse(range.ComfortHigh))));
}
