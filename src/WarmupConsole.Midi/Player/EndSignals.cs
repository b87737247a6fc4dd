using System.Runtime.InteropServices;

namespace WarmupConsole.Midi.Player;

/// <summary>
/// Lets a child process end in order when it is told to by a signal. Without it the player would end with notes sounding, and the ear, with the terminal that
/// closes, in the midst of a call to the sound system: JACK's server then waits for it for ever.
/// </summary>
internal sealed class EndSignals : IDisposable
{
    private readonly PosixSignalRegistration[] _registrations;

    internal EndSignals(Action end) =>
        _registrations =
        [
            On(PosixSignal.SIGTERM, end),
            On(PosixSignal.SIGHUP, end),
            On(PosixSignal.SIGQUIT, end),
            On(PosixSignal.SIGINT, () => { }), // Ctrl-C reaches the whole group; ending is the host's decision
        ];

    public void Dispose()
    {
        foreach (PosixSignalRegistration registration in _registrations)
        {
            registration.Dispose();
        }
    }

    private static PosixSignalRegistration On(PosixSignal signal, Action action) =>
        PosixSignalRegistration.Create(signal, context =>
        {
            context.Cancel = true;
            action();
        });
}
