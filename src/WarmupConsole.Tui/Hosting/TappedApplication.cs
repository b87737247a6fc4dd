using System.Runtime.CompilerServices;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Time;

namespace WarmupConsole.Tui.Hosting;

/// <summary>
/// The screen library's application with a tap on its input. The library has no public way to give it one; a test fails when
/// another version has another constructor.
/// </summary>
public static class TappedApplication
{
    /// <param name="time">Drives the application's timers.</param>
    /// <param name="silenceNow">Called on the input's thread the moment the Tab key arrives.</param>
    /// <returns>Null when the library has no such constructor: keys then come by the normal way alone.</returns>
    public static IApplication? TryCreate(ITimeProvider time, Action silenceNow)
    {
        try
        {
            return (IApplication)New(new InputTapFactory(silenceNow), time);
        }
        catch (Exception e) when (e is MissingMemberException or TypeLoadException)
        {
            return null;
        }
    }

    [UnsafeAccessor(UnsafeAccessorKind.Constructor)]
    [return: UnsafeAccessorType("Terminal.Gui.App.ApplicationImpl, Terminal.Gui")]
    private static extern object New(IComponentFactory factory, ITimeProvider time);
}
