using WarmupConsole.Music.Sounding;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Plans;

/// <summary>What the piano plays, in a step, a plan or an exercise: one word for the style, or a mapping that says more.</summary>
internal static class PianoField
{
    internal const string Name = "piano";

    private static readonly Choices<AccompanimentStyle> Styles = new(PianoData.Styles);
    private static readonly Choices<BetweenKeys> Ways = new(PianoData.Ways);
    private static readonly Choices<Click> Clicks = new(PianoData.Clicks);

    private static readonly FieldTable Table = new(
        "'piano'",
        Field.Choice("style", Styles, "What it plays while the choir sings."),
        Field.YesNo("melody", "It plays the melody too."),
        Field.Choice("between", Ways, "How it leads to the next key."),
        Field.Choice("click", Clicks, "Which beats it taps."));

    internal static Field Row { get; } = new(
        Name,
        new FieldShape.Either(new FieldShape.Choice<AccompanimentStyle>(Styles), new FieldShape.Map(Table)),
        "What the piano plays: a style, or more than that.");

    internal static PianoWish Read(MapReader reader)
    {
        if (reader.Find(Name) is not YamlMap)
        {
            return new(reader.Choice<AccompanimentStyle>(Name));
        }

        MapReader piano = reader.Map(Name)!;
        PianoWish wish = new(piano.Choice<AccompanimentStyle>("style"), piano.YesNo("melody"), piano.Choice<BetweenKeys>("between"), piano.Choice<Click>("click"));
        piano.Finish();
        return wish;
    }

    /// <summary>The value of the field, or null when it says nothing.</summary>
    internal static string? Write(PianoWish wish)
    {
        if (wish == PianoWish.None)
        {
            return null;
        }

        if (wish == new PianoWish(wish.Style))
        {
            return Styles.Name(wish.Style!.Value);
        }

        string?[] fields =
        [
            wish.Style is { } style ? $"style: {Styles.Name(style)}" : null,
            wish.DoublesMelody is { } melody ? $"melody: {(melody ? "true" : "false")}" : null,
            wish.Between is { } between ? $"between: {Ways.Name(between)}" : null,
            wish.Click is { } click ? $"click: {Clicks.Name(click)}" : null,
        ];
        return $"{{{string.Join(", ", fields.OfType<string>())}}}";
    }
}
