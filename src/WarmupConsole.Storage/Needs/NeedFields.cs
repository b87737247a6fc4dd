using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Needs;

/// <summary>What needs.yaml may hold.</summary>
public static class NeedFields
{
    /// <summary>What is needed: each entry names one of these.</summary>
    internal static readonly string[] Kinds = ["pitch", "region", "purpose"];

    private static readonly FieldTable Need = new(
        "a need",
        Field.Id("part", "A part, a group, or everyone."),
        Field.Text("pitch", "A sounding pitch, such as F#5."),
        Field.Text("region", "A range of sounding pitches, such as C5-F5."),
        Field.Choice("purpose", ExerciseWords.PurposeNames, "What exercises should train."),
        Field.Id("kind", "The kind of mark it comes from: strained, pressed, tired and hoarse are spared, not trained."),
        Field.Text("piece", "The piece it comes from."),
        Field.Text("bars", "Its bars, such as 12-15."),
        Field.Date("until", "The last day on which it matters."),
        Field.Date("done", "The day on which it was done."))
    {
        Rules = [new FieldRule.ExactlyOne(Kinds)],
    };

    public static FieldTable Needs { get; } = new(
        "a needs file",
        Field.Format,
        Field.List("needs", new(0, 500, "needs"), Need, "What to work on.").Must);
}
