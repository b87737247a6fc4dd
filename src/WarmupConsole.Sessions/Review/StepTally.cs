namespace WarmupConsole.Sessions.Review;

/// <summary>A step while its log is read.</summary>
internal sealed class StepTally(int step, string exerciseId)
{
    internal string ExerciseId { get; set; } = exerciseId;

    internal TimeSpan Spent { get; private set; }

    internal TimeSpan Talk { get; private set; }

    internal bool HasKeys { get; set; }

    internal int Rungs { get; set; }

    internal int Rounds { get; set; }

    internal void Spend(TimeSpan time, bool isTalk)
    {
        Spent += time;
        Talk += isTalk ? time : TimeSpan.Zero;
    }

    internal ReviewStep Finish(string title) => new(step, ExerciseId, title, Spent, Talk, Rungs, Rounds) { HasKeys = HasKeys };
}
