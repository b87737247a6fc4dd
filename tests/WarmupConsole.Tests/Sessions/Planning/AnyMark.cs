using WarmupConsole.Music.Pitches;
using WarmupConsole.Tests.Sessions.Review;

namespace WarmupConsole.Tests.Sessions.Planning;

/// <summary>A mark on one of four rungs, by index, so that a property test can draw it.</summary>
internal sealed record AnyMark(int Part, int Kind, int Rung, bool OnTop)
{
    private static readonly string[] Parts = ["soprano", "alto", "tenor", "bass"];
    private static readonly string[] Kinds = ["flat", "strained", "late"];
    private static readonly string[] Keys = ["D4", "Eb4", "E4", "F4"];

    internal SampleLog AddTo(SampleLog log, int id) =>
        log.Mark(new(id, 4, Rung, "raw", [Parts[Part]], Kinds[Kind], Pitch.Parse(Keys[Rung]).ToAscii(), Place: OnTop ? "top" : ""));
}
