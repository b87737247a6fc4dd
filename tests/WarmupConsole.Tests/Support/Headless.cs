using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;

namespace WarmupConsole.Tests.Support;

/// <summary>A window running on a screen in memory, in virtual time.</summary>
internal sealed class Headless : IDisposable
{
    private readonly SessionToken _token;

    public Headless(IRunnable root, int width = 120, int height = 36)
    {
        App = Application.Create(Time);
        App.Init(DriverRegistry.Names.ANSI);
        App.Driver!.SetScreenSize(width, height);
        _token = App.Begin(root)!;
        Pump();
    }

    public VirtualTimeProvider Time { get; } = new();

    public IApplication App { get; }

    public string Screen => App.Driver!.ToString()!;

    public string Ansi => App.Driver!.ToAnsi();

    /// <summary>One turn of the loop without its wait.</summary>
    public Headless Pump()
    {
        App.LayoutAndDraw();
        App.Navigation?.UpdateCursor();
        App.TimedEvents!.RunTimers();
        App.LayoutAndDraw();
        return this;
    }

    public Headless Press(params Key[] keys)
    {
        foreach (Key key in keys)
        {
            App.InjectKey(key);
            Pump();
        }

        return this;
    }

    public Headless Type(string text)
    {
        foreach (System.Text.Rune rune in text.EnumerateRunes())
        {
            Press(new Key(rune.Value));
        }

        return this;
    }

    public Headless Resize(int width, int height)
    {
        App.Driver!.SetScreenSize(width, height);
        return Pump();
    }

    public Headless Advance(TimeSpan time)
    {
        Time.Advance(time);
        return Pump();
    }

    public void Dispose()
    {
        App.End(_token);
        App.Dispose();
    }
}
