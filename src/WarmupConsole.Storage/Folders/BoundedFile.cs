using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Folders;

/// <summary>Reads whole files, up to a limit; what the system refuses is a problem, never an exception.</summary>
internal static class BoundedFile
{
    /// <summary>The bytes, or why not. A file larger than the limit is read no further than one byte beyond it.</summary>
    internal static FileRead<byte[]> Read(string path, int mostBytes, string tooLarge = StorageTexts.TooLarge)
    {
        try
        {
            using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            using MemoryStream held = new();
            byte[] piece = new byte[65536];
            int length;
            while (held.Length <= mostBytes && (length = stream.Read(piece)) > 0)
            {
                held.Write(piece, 0, length);
            }

            return held.Length <= mostBytes ? new(held.ToArray(), []) : Bad(path, tooLarge);
        }
        catch (Exception fault) when (fault is FileNotFoundException or DirectoryNotFoundException)
        {
            return Bad(path, StorageTexts.NoSuchFile);
        }
        catch (Exception fault) when (FileFault.IsExpected(fault))
        {
            return Bad(path, StorageTexts.Unreadable(Directory.Exists(path) ? "it is a folder" : FileFault.Reason(fault)));
        }
    }

    private static FileRead<byte[]> Bad(string path, string message) => new(null, [FileProblem.Whole(path, message)]);
}
