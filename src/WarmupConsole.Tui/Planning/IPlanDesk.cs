using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Editing;

namespace WarmupConsole.Tui.Planning;

/// <summary>What the planning screen works on: it edits a draft, and asks for all else.</summary>
public interface IPlanDesk
{
    /// <summary>Raised, on any thread, after <see cref="Sound"/> changed.</summary>
    event Action? Changed;

    /// <summary>The plan as it was read.</summary>
    PlanDraft Start { get; }

    /// <summary>The file it is of.</summary>
    string Name { get; }

    /// <summary>The catalogue and the choir's own.</summary>
    IReadOnlyList<Exercise> Exercises { get; }

    /// <summary>What sounds, or why nothing does.</summary>
    string Sound { get; }

    /// <summary>What the check says of a draft, errors first.</summary>
    IReadOnlyList<PlanRemark> Check(PlanDraft draft);

    /// <summary>The comments that would be lost if the draft were written now.</summary>
    IReadOnlyList<string> LostComments(PlanDraft draft);

    /// <summary>Writes it; what became of it, and whether it is safe.</summary>
    (bool IsSaved, string Sentence) Save(PlanDraft draft);

    /// <summary>Plays the first key of a step.</summary>
    void Play(WarmupStep step);

    /// <summary>Every note stops at once. From any thread.</summary>
    void Silence();

    /// <summary>Lets the player go on; called often.</summary>
    void Tick();
}
