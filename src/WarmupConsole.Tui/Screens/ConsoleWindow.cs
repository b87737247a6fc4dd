using System.Drawing;
using Terminal.Gui.Input;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tui.Screens;

/// <summary>The window of a running session: takes keys, shows what the presenter draws.</summary>
public sealed class ConsoleWindow : CanvasWindow
{
    private readonly ILiveConsole _console;
    private readonly ScreenControl _control;
    private ScreenStamp? _shown;

    public ConsoleWindow(ILiveConsole console)
        : this(console, Theme.For(Environment.GetEnvironmentVariable("NO_COLOR")))
    {
    }

    public ConsoleWindow(ILiveConsole console, Theme theme)
        : base(theme)
    {
        (_console, _control) = (console, new(console));
        FirstPicture += console.FirstPictureStands;
    }

    protected override bool Leaves => _control.Leaves;

    protected override void Press(Key key) => _control.Press(key);

    protected override void Paste(string text) => _control.Paste(text);

    protected override void Listen(bool begins)
    {
        if (begins)
        {
            _console.Changed += AskRefresh;
        }
        else
        {
            _console.Changed -= AskRefresh;
        }
    }

    protected override Canvas? Draw(Size size)
    {
        _control.Listen();
        ScreenModel model = _control.Model();
        ScreenStamp stamp = ScreenStamp.Of(model, size);
        if (stamp == _shown)
        {
            return null;
        }

        _shown = stamp;
        return ScreenPresenter.Draw(model with { Keys = _control.Hints }, size.Width, size.Height);
    }
}
