namespace WarmupConsole.Storage.Folders;

/// <summary>Writes files that are not there yet; nothing is ever overwritten.</summary>
public static class NewFile
{
    /// <summary>Makes the folder if need be, writes and flushes; null, or why it could not.</summary>
    public static string? Write(string path, ReadOnlySpan<byte> bytes)
    {
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
            using FileStream stream = new(path, FileMode.CreateNew, FileAccess.Write, FileShare.Read);
            stream.Write(bytes);
            stream.Flush(flushToDisk: true);
            return null;
        }
        catch (IOException) when (File.Exists(path))
        {
            return StorageTexts.AlreadyThere;
        }
        catch (Exception fault) when (FileFault.IsExpected(fault))
        {
            return StorageTexts.Unwritable(FileFault.Reason(fault));
        }
    }
}
