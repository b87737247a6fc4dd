using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Plans;

/// <summary>What a plan file may hold.</summary>
public static class PlanFields
{
    private static readonly FieldTable Off = new(
        "a rule that is off",
        Field.Id("rule", "Name of a rule of the check.").Must,
        Field.Text("because", "Why it does not hold here.").Must);

    private static readonly FieldTable Bare = new(
        "'bare'",
        Field.YesNo("told", "The singers know that they come warmed up."),
        Field.Text("because", "Why there is no warm-up.").Must);

    internal static readonly FieldTable Keys = new(
        "'keys'",
        Field.Text("start", "First tonic, such as C4, Bb3 or F#4."),
        Field.Choice("shape", PlanWords.Shapes, "Where the keys go."),
        Field.Id("limit", "For whom every key must fit: everyone, any, a part or a group."),
        Field.Whole("reach", PlanWords.Reach, "Per cent beyond comfortable towards extreme."),
        Field.Whole("tolerance", PlanWords.Tolerance, "Semitones that a part may go beyond before it rests."),
        Field.Whole("by", PlanWords.By, "Semitones from key to key."),
        Field.YesNo("octave", "A part that would rest takes the octave, where it can sing that."),
        Field.Whole("most", PlanWords.Most, "Most keys to the turning point."));

    private static readonly FieldTable Tempos = new(
        "'tempo'",
        Field.Number("from", PlanWords.Tempo, "In the first key; without it as usual."),
        Field.Number("to", PlanWords.Tempo, "In the last key.").Must);

    private static readonly FieldTable Step = new(
        "a step",
        Field.Id("exercise", "Id of an exercise of the catalogue or of the choir.").Must,
        Field.Whole("talk", PlanWords.Talk, "Seconds of talk before it."),
        new Field("tempo", new FieldShape.Either(new FieldShape.Number(PlanWords.Tempo), new FieldShape.Map(Tempos)), "Beats a minute, or from the first key to the last."),
        Field.Whole("rounds", PlanWords.Rounds, "Rounds of a body or breathing exercise."),
        Field.Whole("breath", PlanWords.Breath, "Beats of breath between two keys."),
        Field.Map("keys", Keys, "The keys of a sung exercise."),
        Field.List("answers", PlanWords.Answers, new FieldShape.Text(), "Findings and needs that it answers; then it is not left out when time runs short."),
        Field.Whole("value", PlanWords.Value, "What it was worth when the plan was proposed."),
        PianoField.Row,
        Field.List("because", PlanWords.Because, new FieldShape.Text(), "Why this step is here."));

    public static FieldTable Plan { get; } = new(
        "a plan",
        Field.Format,
        Field.Map("bare", Bare, "A rehearsal without warm-up, on purpose; in place of steps."),
        Field.Date("date", "The day of the rehearsal."),
        Field.Text("title", "As it is shown."),
        Field.Whole("minutes", PlanWords.Minutes, "How long the warm-up may take."),
        Field.Choice("advance", PlanWords.Advance, "Goes on by itself, or at each key press."),
        PianoField.Row,
        Field.List("off", PlanWords.Off, Off, "Rules of the check that do not count here."),
        Field.List("steps", PlanWords.Steps, Step, "What is done, in order."))
    {
        Rules = [new FieldRule.ExactlyOne(["bare", "steps"])],
    };
}
