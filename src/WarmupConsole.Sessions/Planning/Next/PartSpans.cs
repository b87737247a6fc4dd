using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>What a part sings in a step.</summary>
internal static class PartSpans
{
    /// <summary>From the lowest to the highest note of each key that the part sings, in order; asked of every offer, so without queries.</summary>
    internal static PitchRange[] Of(WarmupStep step, string part)
    {
        List<PitchRange> spans = [];
        foreach (Rung rung in step.Ladder.Rungs)
        {
            foreach (RungPart sung in rung.Parts)
            {
                if (sung.Sings && sung.Part.Id == part)
                {
                    spans.Add(sung.Span);
                }
            }
        }

        return [.. spans];
    }
}
