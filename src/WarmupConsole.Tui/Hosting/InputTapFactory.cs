using Terminal.Gui.Drivers;

namespace WarmupConsole.Tui.Hosting;

/// <summary>The parts of the library's driver, with a tapped input. Made when asked for, as the library makes its own: it changes the terminal's mode.</summary>
internal sealed class InputTapFactory(Action silenceNow) : AnsiComponentFactory
{
    public override IInput<char> CreateInput() => new InputTap(new(silenceNow));
}
