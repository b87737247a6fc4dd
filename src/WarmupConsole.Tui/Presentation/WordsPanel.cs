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
            return [new Block(roomy ? BannerRows : 1, pane => DrawBanner(pane, model)), .. Sung(model, width)];
        }

        return model.Session.State == LiveState.Introduce
            ? [.. Talk(model, width, roomy), .. Sung(model, width)]
            : [.. Sung(model, width), new Block(1, pane => BeatPanel.Draw(pane, model))];
    }

    private static IEnumerable<Block> Talk(ScreenModel model, int width, bool roomy)
    {
        Exercise? exercise = model.Exercise;
        int most = roomy ? 2 : 1;
        return
        [
            .. Block.Paragraph(exercise?.Instruction ?? "", width, most, Ink.Strong),
            .. Labelled(ScreenTexts.ListenFor, exercise?.Listen, width, 1),
            .. Labelled(ScreenTexts.Care, exercise?.Caution, width, most),
        ];
    }

    private static IEnumerable<Block> Labelled(string label, string? text, int width, int most) =>
        string.IsNullOrWhiteSpace(text) ? [] : Block.Paragraph(label + text, width, most, Ink.Plain);

    private static IEnumerable<Block> Sung(ScreenModel model, int width)
    {
        if (model.Exercise?.Pattern is not { } pattern)
        {
            return [];
        }

        IEnumerable<Block> lines = PatternLine.Layout(pattern, width, width > 100 ? 3 : 2).Take(2)
            .SelectMany(line => new[] { Block.Line(line.Degrees, Ink.Plain), Block.Line(line.Syllables, Ink.Strong) });
        return model.Exercise.Voices.Count == 0 ? lines : lines.Append(Block.Line(InParts(model.Exercise), Ink.Plain));
    }

    private static string InParts(Exercise exercise) =>
        ScreenTexts.Of(ScreenTexts.InParts, CellText.Clean(string.Join(", ", exercise.Voices.SelectMany(voice => voice.Parts).Distinct())));

    private static void DrawBanner(Pane pane, ScreenModel model)
    {
        string word = ScreenTexts.Holds[model.Session.Hold];
        string onward = model.Session.Rung is { } rung ? ScreenTexts.Of(ScreenTexts.SpaceGoesOnIn, rung.Tonic.Name) : ScreenTexts.SpaceGoesOn;
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
