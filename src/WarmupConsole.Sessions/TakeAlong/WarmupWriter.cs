using WarmupConsole.Music.Writing;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Sessions.TakeAlong;

/// <summary>
/// Writes a warm-up out from beginning to end. The live machine itself is led through it, from key to key without a word, and
/// what it hands to the piano is written down: a file cannot differ from what a choir hears. In place of the talk stand four
/// beats of rest between steps; a step in which no key fits is passed over.
/// </summary>
public static class WarmupWriter
{
    /// <summary>The whole warm-up as a piece.</summary>
    /// <param name="warmup">With steps.</param>
    /// <param name="remarks">Sentences that belong to it, such as the voice-care card.</param>
    public static WrittenPiece Write(Warmup warmup, IReadOnlyList<string> remarks)
    {
        ArgumentNullException.ThrowIfNull(warmup);
        return new WarmupDictation(warmup).Write(remarks);
    }
}
