using WarmupConsole.Music.Exercises;
using WarmupConsole.Storage.Plans;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Exercises;

/// <summary>What exercise files may hold.</summary>
public static class ExerciseFields
{
    /// <summary>Means nothing where there is a pattern.</summary>
    internal static readonly string[] CountedOnly = ["phases", "rounds"];

    /// <summary>Means nothing where there are phases.</summary>
    internal static readonly string[] SungOnly = ["mode", "pattern", "syllables", "voices", "harmony", PianoField.Name, "dynamics", "articulation", "keys"];

    private static readonly Field Pattern = Field.Text("pattern", "Degrees with beats: \"1:1/2 2:1/2 3 -:1\".");
    private static readonly Field Syllables = Field.Text("syllables", "One for each note or one for all, the vowel in IPA after a slash: \"noo/u ~ mah/ɑ\".");

    private static readonly FieldTable Tempo = new(
        "'tempo'",
        Field.Number("default", PlanWords.Tempo, "Beats a minute as usual.").Must,
        Field.Number("from", PlanWords.Tempo, "The slowest.").Must,
        Field.Number("to", PlanWords.Tempo, "The quickest.").Must,
        Field.Number("last", PlanWords.Tempo, "In the last key, where a plan says no tempo; sung exercises only."));

    private static readonly FieldTable Phase = new(
        "a phase",
        Field.Choice("do", ExerciseWords.Actions, "What is done.").Must,
        Field.Whole("counts", ExerciseWords.Counts, "For how many beats.").Must,
        Field.Text("say", "What is said or shown with it."))
    {
        Rules = [new FieldRule.AtMost("counts", ExerciseWords.LongestHold, "do", ExerciseWords.Actions.Name(BreathAction.Hold))],
    };

    private static readonly FieldTable Voice = new(
        "a voice",
        Field.OneOrMany("parts", ExerciseWords.VoiceParts, new FieldShape.Id(), "Parts or groups that sing this line.").Must,
        Pattern.Must,
        Syllables,
        Field.Text("offset", "Beats after which it comes in."));

    private static readonly FieldTable Exercise = new(
        "an exercise",
        Field.Choice("stage", ExerciseWords.Stages, "The kind of work, which gives its place in a warm-up.").Must,
        Field.Id("id", "As plans name it.").Must,
        Field.Text("title", "As it is shown.").Must,
        Field.Map("tempo", Tempo, "Beats a minute.").Must,
        Field.OneOrMany("purposes", ExerciseWords.Purposes, new FieldShape.Choice<Purpose>(ExerciseWords.PurposeNames), "What it trains."),
        Field.Text("instruction", "One or two sentences to the singers."),
        Field.Text("listen", "What the director listens for."),
        Field.Text("caution", "A caution, where one is due."),
        Field.Whole("talk", PlanWords.Talk, "Seconds of talk before it when the choir knows it."),
        Field.List("phases", ExerciseWords.Phases, Phase, "Counted phases of one round."),
        Field.Whole("rounds", PlanWords.Rounds, "How many rounds are usual."),
        Field.Choice("mode", ExerciseWords.Modes, "The scale that its degrees refer to."),
        Pattern,
        Syllables,
        Field.List("voices", ExerciseWords.Voices, Voice, "Lines of their own for some parts."),
        Field.Text("harmony", "Roman numerals with beats: \"I:2 V7:2 I:3\"."),
        PianoField.Row,
        Field.OneOrMany("dynamics", ExerciseWords.Dynamics, new FieldShape.Choice<int>(ExerciseWords.Loudness), "Loudness, spread evenly over the pattern."),
        Field.Choice("articulation", ExerciseWords.Articulations, "How its notes are joined."),
        Field.Map("keys", PlanFields.Keys, "The keys where a plan says nothing about keys, as in a plan; a drill has its own."))
    {
        Rules =
        [
            new FieldRule.When("stage", StagesWhere(true), ["phases"], SungOnly),
            new FieldRule.When("stage", StagesWhere(false), ["pattern"], CountedOnly),
        ],
    };

    public static FieldTable Exercises { get; } = new(
        "an exercise file",
        Field.Format,
        Field.List("exercises", ExerciseWords.HowMany, Exercise, "The exercises.").Must);

    private static string[] StagesWhere(bool hasPhases) =>
        [.. Enum.GetValues<Stage>().Where(stage => ExerciseWords.HasPhases(stage) == hasPhases).Select(StageData.Id)];
}
