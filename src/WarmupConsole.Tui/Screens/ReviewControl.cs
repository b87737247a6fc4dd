using Terminal.Gui.Input;
using WarmupConsole.Tui.Keys;
using WarmupConsole.Tui.Presentation;
using WarmupConsole.Tui.Presentation.Reviewing;

namespace WarmupConsole.Tui.Screens;

/// <summary>Which page of the review is looked at, and how far down; and what keys do with that.</summary>
public sealed class ReviewControl(ReviewModel model)
{
    private static readonly int Views = Enum.GetValues<ReviewView>().Length;

    private readonly int[] _tops = new int[Views];
    private ReviewView _beforeHelp;

    public ReviewView View { get; private set; }

    /// <summary>The first line of the page that is shown, as far as there are so many.</summary>
    public int Top => _tops[(int)View];

    /// <summary>True once the director wants to leave.</summary>
    public bool Leaves { get; private set; }

    public Canvas Draw((int Width, int Height) size) => ReviewPresenter.Draw(model, View, _tops[(int)View], size);

    public void Press(Key key, (int Width, int Height) size)
    {
        (int most, int rows) = ReviewPresenter.Room(model, View, size);
        int top = Math.Min(most, _tops[(int)View]);
        switch (KeyStroke.Name(key))
        {
            case "CursorRight":
                View = (ReviewView)(((int)View + 1) % Views);
                return;
            case "CursorLeft":
                View = (ReviewView)(((int)View + Views - 1) % Views);
                return;
            case [>= '1' and <= '8'] digit:
                View = (ReviewView)(digit[0] - '1');
                return;
            case "?" or "Esc" when View == ReviewView.Help:
                View = _beforeHelp;
                return;
            case "?":
                (_beforeHelp, View) = (View, ReviewView.Help);
                return;
            case "Ctrl+Q" or "q":
                Leaves = true;
                return;
            case var stroke:
                _tops[(int)View] = Math.Clamp(top + Move(stroke, rows, most), 0, most);
                return;
        }
    }

    private static int Move(string stroke, int rows, int most) => stroke switch
    {
        "CursorDown" => 1,
        "CursorUp" => -1,
        "Space" or "PageDown" => rows,
        "Backspace" or "PageUp" => -rows,
        "Home" => -most,
        "End" => most,
        _ => 0,
    };
}
