using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tui.Presentation;

/// <summary>What to sing and where in it we are; while a step is explained, what to say about it; in a hold, how to go on.</summary>
internal static class WordsPanel
{
    private const int BannerRows = 3;
    private const int RoomyScreen = 20;

    internal static int Rows(ScreenModel model, Pane body) => Blocks(model, body.Width, body.Canvas.Height).Sum(block => block.Rows);

    internal static void Draw(Pane pane, ScreenModel model) => Block.DrawAll(pane, Blocks(model, pane.Width, pane.Canvas.Height));

    private static IEnumerable<Block> Blocks(ScreenModel model, int width, int height)
    {
        bool roomy = height >= RoomyScreen;
        if (model.Session.Hold != Hold.None)
        {
            return [new Block(roomy ? BannerRows : 1, pane => DrawBanner(pane, model)), .. Sung(model, width, height)];
        }

        return model.Session.State == LiveState.Introduce
            ? [.. Talk(model, width, roomy), .. Sung(model, width, height), .. Call(model)]
            : [.. Sung(model, width, height), new Block(1, pane => BeatPanel.Draw(pane, model))];
    }

    private static IEnumerable<Block> Talk(ScreenModel model, int width, bool roomy)
    {
        Exercise? exercise = model.Exercise;
        int most = roomy ? 2 : 1;
        return
        [
            .. Block.Paragraph(exercise?.Instruction ?? "", width, most, Ink.Strong),
            .. Labelled(ScreenTexts.ListenFor, roomy ? exercise?.Listen : null, width, 1),
            .. Labelled(ScreenTexts.Care, exercise?.Caution, width, most),
        ];
    }

    /// <summary>How long the talk has been, how long it may be, and how it ends.</summary>
    private static IEnumerable<Block> Call(ScreenModel model)
    {
        if (CallToAct.Of(model) is not { } call || model.Session.Step is not { } step)
        {
            return [];
        }

        string spent = ScreenTexts.Clock(model.Session.Clocks.StepAt(model.Now));
        return [Block.Line(ScreenTexts.Of(ScreenTexts.TalkOf, spent, ScreenTexts.Clock(TimeSpan.FromSeconds(step.TalkSeconds)), call), Ink.Strong)];
    }

    private static IEnumerable<Block> Labelled(string label, string? text, int width, int most) =>
        string.IsNullOrWhiteSpace(text) ? [] : Block.Paragraph(label + text, width, most, Ink.Plain);

    private static IEnumerable<Block> Sung(ScreenModel model, int width, int height)
    {
        if (model.Exercise?.Pattern is not { } pattern)
        {
            return [];
        }

        IEnumerable<Block> lines = LargeWords.For(pattern, width, height) is { } large ? [large] : PlainWords(pattern, width);
        return model.Exercise.Voices.Count == 0 ? lines : lines.Append(Block.Line(InParts(model.Exercise), Ink.Plain));
    }

    private static IEnumerable<Block> PlainWords(Pattern pattern, int width) => PatternLine.Layout(pattern, width, width > 100 ? 3 : 2).Take(2)
        .SelectMany(line => new[] { Block.Line(line.Degrees, Ink.Plain), Block.Line(line.Syllables, Ink.Strong) });

    private static string InParts(Exercise exercise) =>
        ScreenTexts.Of(ScreenTexts.InParts, CellText.Clean(string.Join(", ", exercise.Voices.SelectMany(voice => voice.Parts).Distinct())));

    /// <summary>What going on leads to: in a key to that key again, between two keys to the next one.</summary>
    private static string Onward(ScreenModel model) => model.Session.State == LiveState.Introduce || model.Shown is not { } rung
        ? ScreenTexts.SpaceGoesOn
        : ScreenTexts.Of(model.IsBetweenKeys ? ScreenTexts.SpaceGoesOnTo : ScreenTexts.SpaceGoesOnIn, model.Notes.WriteName(rung.Tonic));

    private static void DrawBanner(Pane pane, ScreenModel model)
    {
        string word = ScreenTexts.Holds[model.Session.Hold];
        string onward = Onward(model);
        if (pane.Height < BannerRows)
        {
            pane.WriteFit(0, 0, $"{word}  {onward}", Ink.Alert);
            return;
        }

        int columns = BlockLetters.Columns(word, 1);
        BlockLetters.Draw(pane.Sub(0, 0, columns, BannerRows), word, Ink.Key);
        pane.WriteFit(columns + 2, 1, onward, Ink.Strong);
    }
}
