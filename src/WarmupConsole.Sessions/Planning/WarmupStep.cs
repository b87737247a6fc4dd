using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Planning;

/// <summary>A step made ready: exercise found, tempo settled, ladder built for the choir.</summary>
/// <param name="Plan">What the plan says.</param>
/// <param name="Exercise">The exercise.</param>
/// <param name="Tempo">The tempo it starts at.</param>
/// <param name="Ladder">The keys; without rungs for body and breathing.</param>
/// <param name="TalkSeconds">Seconds of talk before it.</param>
/// <param name="Rounds">Rounds of the phases; 0 for sung steps.</param>
/// <param name="Planned">Talk, lead-in and all rungs (or rounds), by the formula of <see cref="StepTiming"/>.</param>
public sealed record WarmupStep(
    PlanStep Plan,
    Exercise Exercise,
    Tempo Tempo,
    KeyLadder Ladder,
    int TalkSeconds,
    int Rounds,
    TimeSpan Planned);
