using System.ComponentModel;
using System.Diagnostics;

namespace WarmupConsole.Midi.Player;

/// <summary>
/// A player in a child process. Its standard error is read and kept off the screen: native libraries print there, and so does
/// the runtime when it crashes.
/// </summary>
public sealed class ChildPlayer : IPlayerLink
{
    private const int PatienceMilliseconds = 3000;
    private const int LastWordsMilliseconds = 500;
    private readonly Process _process;
    private volatile string _lastWords = "";
    private bool _disposed;

    /// <param name="command">The program and its arguments; the streams are redirected here.</param>
    /// <exception cref="Win32Exception">The program cannot be started.</exception>
    public ChildPlayer(ProcessStartInfo command)
    {
        command.RedirectStandardInput = true;
        command.RedirectStandardOutput = true;
        command.RedirectStandardError = true;
        command.UseShellExecute = false;
        _process = new() { StartInfo = command };
        _process.ErrorDataReceived += (_, line) => _lastWords = string.IsNullOrWhiteSpace(line.Data) ? _lastWords : line.Data.Trim();
        _process.Start();
        _process.BeginErrorReadLine();
        (ToPlayer, FromPlayer) = (_process.StandardInput.BaseStream, _process.StandardOutput.BaseStream);
    }

    /// <summary>Taken at the start: a thread may first ask for it when the process has been disposed.</summary>
    public Stream ToPlayer { get; }

    /// <inheritdoc cref="ToPlayer"/>
    public Stream FromPlayer { get; }

    public string LastWords
    {
        get
        {
            // What was printed last may arrive after the other stream has ended; the second call waits for all of it.
            if (_process.WaitForExit(LastWordsMilliseconds))
            {
                _process.WaitForExit();
            }

            return _lastWords;
        }
    }

    public int ProcessId => _process.Id;

    public void Kill()
    {
        try
        {
            _process.Kill();
        }
        catch (Exception e) when (e is InvalidOperationException or Win32Exception)
        {
            // It has ended, or is just ending.
        }
    }

    public void Dispose()
    {
        if (_disposed)
        {
            return;
        }

        _disposed = true;
        if (!_process.WaitForExit(PatienceMilliseconds))
        {
            Kill();
        }

        _process.Dispose();
    }
}
