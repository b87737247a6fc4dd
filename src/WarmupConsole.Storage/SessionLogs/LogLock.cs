using System.Globalization;
using System.Text;
using WarmupConsole.Storage.Folders;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>
/// The file beside a log that is held open exclusively while the log is written. The system gives it back however the holder ends,
/// so a lock that can be opened is one that nobody holds. Its text (process and machine) is for people, and tells a copy that
/// folder synchronisation brought from another machine, where the holder may still live.
/// </summary>
internal sealed class LogLock : IDisposable
{
    private readonly FileStream stream;

    private LogLock(FileStream stream) => this.stream = stream;

    internal static string PathFor(string logPath) => Path.ChangeExtension(logPath, LogFormat.LockExtension);

    /// <summary>The lock, or why it cannot be had.</summary>
    internal static (LogLock? Lock, string? Refusal) Take(string logPath, string machine)
    {
        string path = PathFor(logPath);
        try
        {
            FileStream stream = new(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            if (Owner(stream) is { } other && other != machine)
            {
                stream.Dispose();
                return (null, LogTexts.ForeignLock(other));
            }

            Sign(stream, machine);
            return (new(stream), null);
        }
        catch (IOException) when (File.Exists(path))
        {
            return (null, LogTexts.Busy);
        }
        catch (Exception fault) when (FileFault.IsExpected(fault))
        {
            return (null, StorageTexts.Unwritable(FileFault.Reason(fault)));
        }
    }

    /// <summary>True while a program on this machine holds the lock; looking does not take it.</summary>
    internal static bool IsHeld(string logPath)
    {
        string path = PathFor(logPath);
        try
        {
            using FileStream look = new(path, FileMode.Open, FileAccess.Read, FileShare.Read);
            return false;
        }
        catch (IOException) when (File.Exists(path))
        {
            return true;
        }
        catch (Exception fault) when (FileFault.IsExpected(fault))
        {
            return false;
        }
    }

    public void Dispose()
    {
        try
        {
            File.Delete(stream.Name);
        }
        catch (Exception fault) when (FileFault.IsExpected(fault))
        {
            // A lock file that stays behind is held by nobody once the stream is closed.
        }

        stream.Dispose();
    }

    /// <summary>The machine that wrote it, or null when there is no telling.</summary>
    private static string? Owner(FileStream stream)
    {
        byte[] text = new byte[Math.Min(stream.Length, 300)];
        stream.ReadExactly(text);
        string[] words = Encoding.UTF8.GetString(text).Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries);
        return words.Length == 2 ? Yaml.Printable.Line(words[1]) : null;
    }

    private static void Sign(FileStream stream, string machine)
    {
        stream.SetLength(0);
        stream.Write(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{Environment.ProcessId} {machine}\n")));
        stream.Flush();
    }
}
