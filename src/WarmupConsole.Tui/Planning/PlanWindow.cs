using System.Drawing;
using Terminal.Gui.Input;
using WarmupConsole.Tui.Presentation;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tui.Planning;

/// <summary>The window in which a plan is edited.</summary>
public sealed class PlanWindow : CanvasWindow
{
    private readonly IPlanDesk _desk;
    private readonly PlanControl _control;
    private Size? _shown;
    private volatile bool _isStale = true;

    public PlanWindow(IPlanDesk desk)
        : this(desk, Theme.For(Environment.GetEnvironmentVariable("NO_COLOR")))
    {
    }

    public PlanWindow(IPlanDesk desk, Theme theme)
        : base(theme) => (_desk, _control) = (desk, new(desk));

    protected override bool Leaves => _control.Leaves;

    protected override void Press(Key key)
    {
        _control.Press(key);
        _isStale = true;
    }

    protected override void Paste(string text)
    {
        _control.Paste(text);
        _isStale = true;
    }

    protected override void Listen(bool begins)
    {
        if (begins)
        {
            _desk.Changed += OnChanged;
        }
        else
        {
            _desk.Changed -= OnChanged;
        }
    }

    /// <summary>Only a key, the desk or another size changes the picture; the turn of the clock lets the player go on.</summary>
    protected override Canvas? Draw(Size size)
    {
        _desk.Tick();
        if (!_isStale && _shown == size)
        {
            return null;
        }

        (_isStale, _shown) = (false, size);
        return PlanPage.Draw(_control.Model(), size.Width, size.Height);
    }

    private void OnChanged()
    {
        _isStale = true;
        AskRefresh();
    }
}
