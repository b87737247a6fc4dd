using System.Drawing;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using WarmupConsole.Tui.Presentation.Reviewing;

namespace WarmupConsole.Tui.Screens;

/// <summary>The review on the whole screen. Nothing changes but by keys.</summary>
public sealed class ReviewWindow : RowsWindow
{
    private readonly ReviewControl _control;

    public ReviewWindow(ReviewModel model)
        : this(model, Theme.For(Environment.GetEnvironmentVariable("NO_COLOR")))
    {
    }

    public ReviewWindow(ReviewModel model, Theme theme)
        : base(theme)
    {
        _control = new(model);
        IsRunningChanged += (_, running) => Started(running.Value);
    }

    private (int Width, int Height) Size => App?.Screen.Size is { } size ? (size.Width, size.Height) : default;

    /// <summary>Every key ends here, so that no binding from elsewhere can act.</summary>
    protected override bool OnKeyDown(Key key)
    {
        _control.Press(key, Size);
        if (_control.Leaves)
        {
            Quit();
        }
        else
        {
            Show(_control.Draw(Size));
        }

        return true;
    }

    private void Started(bool running)
    {
        if (App is not { } app)
        {
            return;
        }

        if (running)
        {
            app.Keyboard.KeyBindings.Clear();
            app.ScreenChanged += OnScreenChanged;
            Show(_control.Draw(Size));
        }
        else
        {
            app.ScreenChanged -= OnScreenChanged;
        }
    }

    private void OnScreenChanged(object? sender, EventArgs<Rectangle> screen) => Show(_control.Draw(Size));
}
