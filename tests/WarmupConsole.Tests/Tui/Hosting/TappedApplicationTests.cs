using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Time;
using WarmupConsole.Tui.Hosting;

namespace WarmupConsole.Tests.Tui.Hosting;

/// <summary>
/// The tap uses a constructor that the screen library does not publish. When one of these fails after an update of the library:
/// look at what ApplicationImpl takes now, and measure again with docs/performance.md.
/// </summary>
public class TappedApplicationTests
{
    [Fact]
    public void The_library_is_the_version_that_the_tap_was_tried_with() =>
        Assert.Equal(new Version(2, 5, 0, 0), typeof(AnsiInput).Assembly.GetName().Version);

    [Fact]
    public void The_library_has_the_constructor_and_takes_the_tapped_driver()
    {
        using IApplication? app = TappedApplication.TryCreate(new VirtualTimeProvider(), () => { });
        Assert.NotNull(app);
        app.Init();
        Assert.Equal(DriverRegistry.Names.ANSI, app.Driver!.GetName());
    }
}
