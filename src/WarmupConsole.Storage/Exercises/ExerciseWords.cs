using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Scales;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Exercises;

/// <summary>The words and limits of exercise files, for reading and for writing.</summary>
internal static class ExerciseWords
{
    internal static readonly Limits HowMany = new(1, 500, "exercises");
    internal static readonly Limits Phases = new(1, 20, "phases");
    internal static readonly Limits Counts = new(1, 60, "counts");
    internal static readonly Limits Dynamics = new(1, 8, "loudness words");
    internal static readonly Limits Voices = new(1, 8, "voices");
    internal static readonly Limits VoiceParts = new(1, 16, "parts");
    internal static readonly Limits Purposes = new(0, 12, "purposes");

    /// <summary>Breath holds are short (docs: cautions).</summary>
    internal const int LongestHold = 4;

    internal static readonly Choices<Stage> Stages = new([.. Enum.GetValues<Stage>().Select(stage => (StageData.Id(stage), stage))]);
    internal static readonly Choices<Mode> Modes = new([.. Enum.GetValues<Mode>().Select(mode => (ModeData.Id(mode), mode))]);
    internal static readonly Choices<Purpose> PurposeNames = new([.. Enum.GetValues<Purpose>().Select(purpose => (PurposeData.Id(purpose), purpose))]);

    /// <summary>Loudness words; the value is their order from soft to loud.</summary>
    internal static readonly Choices<int> Loudness = new(("pp", 0), ("p", 1), ("mp", 2), ("mf", 3), ("f", 4), ("ff", 5));

    internal static readonly Choices<Articulation> Articulations = new(
        ("legato", Articulation.Legato),
        ("staccato", Articulation.Staccato),
        ("marcato", Articulation.Marcato),
        ("glide", Articulation.Glide));

    internal static readonly Choices<BreathAction> Actions = new(
        ("in", BreathAction.In),
        ("hold", BreathAction.Hold),
        ("out", BreathAction.Out),
        ("rest", BreathAction.Rest),
        ("move", BreathAction.Move));

    /// <summary>Body and breathing run in counted phases; every other stage has a pattern.</summary>
    internal static bool HasPhases(Stage stage) => stage is Stage.Body or Stage.Breathing;
}
