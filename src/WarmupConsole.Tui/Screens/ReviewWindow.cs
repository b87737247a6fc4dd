using System.Drawing;
using Terminal.Gui.Input;
using WarmupConsole.Tui.Presentation;
using WarmupConsole.Tui.Presentation.Reviewing;

namespace WarmupConsole.Tui.Screens;

/// <summary>The review on the whole screen. Nothing changes but by keys.</summary>
public sealed class ReviewWindow : CanvasWindow
{
    private readonly ReviewControl _control;
    private (ReviewView View, int Top, Size Size)? _shown;

    public ReviewWindow(ReviewModel model)
        : this(model, Theme.For(Environment.GetEnvironmentVariable("NO_COLOR")))
    {
    }

    public ReviewWindow(ReviewModel model, Theme theme)
        : base(theme) => _control = new(model);

    protected override bool Leaves => _control.Leaves;

    protected override void Press(Key key)
    {
        if (App?.Screen.Size is { } size)
        {
            _control.Press(key, (size.Width, size.Height));
        }
    }

    /// <summary>There is nothing to write here.</summary>
    protected override void Paste(string text)
    {
    }

    protected override Canvas? Draw(Size size)
    {
        if (_shown == (_control.View, _control.Top, size))
        {
            return null;
        }

        _shown = (_control.View, _control.Top, size);
        return _control.Draw((size.Width, size.Height));
    }

    protected override void Listen(bool begins)
    {
    }
}
