using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Planning;

/// <summary>Makes one step of a plan ready, to see its keys and its time.</summary>
internal static class StepMaker
{
    internal static WarmupStep Make(Choir choir, PlanStep step, Exercise exercise)
    {
        Tempo tempo = step.Tempo ?? exercise.Tempo.Default;
        int talk = step.TalkSeconds ?? exercise.TalkSeconds;
        int rounds = exercise.IsSung ? 0 : step.Rounds ?? exercise.Rounds;
        KeyLadder ladder = LadderBuilder.Build(exercise, choir.Parts, step.Keys);
        TimeSpan planned = StepTiming.Step(exercise, tempo, talk, ladder.Rungs.Count, rounds, step.BreathBeats);
        return new(step, exercise, tempo, ladder, talk, rounds, planned);
    }
}
