using System.Runtime.InteropServices;
using Terminal.Gui.App;
using WarmupConsole.Tui.Presentation;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tui.Hosting;

/// <summary>
/// One run of the window between taking the terminal and giving it back. On every way out (end, error, another thread's error,
/// signal, closed terminal) it first restores the terminal, then saves, then explains.
/// </summary>
internal sealed class GuardedRun : IDisposable
{
    private const int InternalError = 70;
    private const int SignalBase = 128;

    // The library switches all mouse reports on, which takes away the terminal's own selection.
    private const string MouseOff = "\u001b[?1003l\u001b[?1015l\u001b[?1006l";

    private static readonly TimeSpan RestoreTime = TimeSpan.FromSeconds(1.5);
    private static readonly TimeSpan SignalTime = TimeSpan.FromSeconds(3);

    private readonly Func<CanvasWindow> _open;
    private readonly Action _silence;
    private readonly Action _save;
    private readonly IApplication _app;
    private readonly List<PosixSignalRegistration> _signals = [];
    private readonly ManualResetEventSlim _ended = new();
    private CanvasWindow? _window;
    private int _restored;
    private int _code;

    /// <param name="open">Makes the window once the terminal is taken.</param>
    /// <param name="silence">Called on the input's thread. The same key comes to the window a moment later and then finds silence, which does no harm.</param>
    /// <param name="save">Silences and saves; may be called twice and from any thread.</param>
    internal GuardedRun(Func<CanvasWindow> open, Action silence, Action save)
    {
        (_open, _silence, _save) = (open, silence, save);
        _app = TappedApplication.TryCreate(new MonotonicTime(), _silence) ?? Application.Create(new MonotonicTime());
        AppDomain.CurrentDomain.UnhandledException += OnUnhandled;
        AppDomain.CurrentDomain.ProcessExit += OnExit;
        foreach (PosixSignal signal in (PosixSignal[])[PosixSignal.SIGTERM, PosixSignal.SIGHUP, PosixSignal.SIGINT, PosixSignal.SIGQUIT])
        {
            _signals.Add(PosixSignalRegistration.Create(signal, OnSignal));
        }

        if (!OperatingSystem.IsWindows())
        {
            // A stopped console would come back with a dead keyboard, and meanwhile nobody could silence the piano.
            _signals.Add(PosixSignalRegistration.Create(PosixSignal.SIGTSTP, context => context.Cancel = true));
        }
    }

    internal int Run()
    {
        string? error = null;
        try
        {
            LoopRate.Hurry();
            _app.Init();
            _app.Driver!.WriteRaw(MouseOff);
            _window = _open();
            _window.FirstPicture += LoopRate.Rest;
            _app.Run(_window);
        }
#pragma warning disable CA1031 // Whatever went wrong, the terminal comes back first and the sentence after it.
        catch (Exception e)
#pragma warning restore CA1031
        {
            (error, _code) = (e.Message, InternalError);
        }

        Restore();
        _save();
        if (error is not null)
        {
            Console.Error.WriteLine(ScreenTexts.Of(ScreenTexts.Stopped, error));
        }

        _ended.Set();
        return _code;
    }

    public void Dispose()
    {
        AppDomain.CurrentDomain.UnhandledException -= OnUnhandled;
        AppDomain.CurrentDomain.ProcessExit -= OnExit;
        _signals.ForEach(signal => signal.Dispose());
        _window?.Dispose();
    }

    /// <summary>Disposing never returns once the terminal is gone, so the wait is bounded.</summary>
    private void Restore()
    {
        if (Interlocked.Exchange(ref _restored, 1) == 0)
        {
            Thread disposing = new(DisposeApp) { IsBackground = true };
            disposing.Start();
            disposing.Join(RestoreTime);
        }
    }

    private void DisposeApp()
    {
        try
        {
            _app.Dispose();
        }
#pragma warning disable CA1031 // On the way out with a broken terminal there is nobody left to tell.
        catch (Exception)
#pragma warning restore CA1031
        {
        }
    }

    private void OnUnhandled(object sender, UnhandledExceptionEventArgs e)
    {
        Restore();
        _save();
    }

    private void OnExit(object? sender, EventArgs e) => Restore();

    private void OnSignal(PosixSignalContext context)
    {
        context.Cancel = true;
        _code = SignalBase + Number(context.Signal);
        new Thread(EndIfHung) { IsBackground = true }.Start();
        try
        {
            _app.Invoke(() => _window?.Quit());
        }
        catch (NotInitializedException)
        {
            // The signal came before the start or after the end: the watch above closes.
        }
    }

    private static int Number(PosixSignal signal) => signal switch
    {
        PosixSignal.SIGHUP => 1,
        PosixSignal.SIGINT => 2,
        PosixSignal.SIGQUIT => 3,
        _ => 15,
    };

    private void EndIfHung()
    {
        if (!_ended.Wait(SignalTime))
        {
            _save();
            Environment.Exit(_code);
        }
    }
}
