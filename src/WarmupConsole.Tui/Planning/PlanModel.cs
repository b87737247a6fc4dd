using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Editing;

namespace WarmupConsole.Tui.Planning;

/// <summary>All that a screenful of the planning screen depends on, besides its size.</summary>
public sealed record PlanModel(PlanDraft Draft, PlanMode Mode, string Name)
{
    public bool IsChanged { get; init; }

    /// <summary>What the check says, errors first.</summary>
    public IReadOnlyList<PlanRemark> Remarks { get; init; } = [];

    /// <summary>The field that is chosen, in <see cref="PlanMode.Fields"/>.</summary>
    public StepField Field { get; init; }

    /// <summary>The letters that are looked for.</summary>
    public string Letters { get; init; } = "";

    /// <summary>What the catalogue shows, and which of it is chosen.</summary>
    public IReadOnlyList<Exercise> Found { get; init; } = [];

    public int Chosen { get; init; }

    /// <summary>What the chosen exercise would be in the plan.</summary>
    public WarmupStep? Offered { get; init; }

    /// <summary>A word to the director, or empty.</summary>
    public string Word { get; init; } = "";

    /// <summary>What sounds, or why nothing does.</summary>
    public string Sound { get; init; } = "";

    public bool HelpOpen { get; init; }

    public bool IsInCatalogue => Mode is PlanMode.PutIn or PlanMode.Replace;

    /// <summary>What is looked at: in the catalogue an exercise, else a step.</summary>
    public WarmupStep? Shown => IsInCatalogue ? Offered : Draft.Step;
}
