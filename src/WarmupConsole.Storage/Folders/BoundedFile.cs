using System.Buffers;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Folders;

/// <summary>Reads whole files, up to a limit; what the system refuses is a problem, never an exception.</summary>
internal static class BoundedFile
{
    private const int FirstPiece = 256 * 1024;

    /// <summary>The bytes, or why not. A file larger than the limit is read no further than one byte beyond it.</summary>
    internal static FileRead<byte[]> Read(string path, int mostBytes, string tooLarge = StorageTexts.TooLarge) =>
        Read(path, mostBytes, bytes => bytes.ToArray(), tooLarge);

    /// <summary>What is made of the bytes, which are gone afterwards: memory is used again, because there may be thousands of files.</summary>
    internal static FileRead<T> Read<T>(string path, int mostBytes, Func<ReadOnlySpan<byte>, T> make, string tooLarge = StorageTexts.TooLarge)
        where T : class
    {
        byte[] held = ArrayPool<byte>.Shared.Rent(FirstPiece);
        try
        {
            int length = Fill(path, ref held, mostBytes);
            return length <= mostBytes ? new(make(held.AsSpan(0, length)), []) : Bad<T>(path, tooLarge);
        }
        catch (Exception fault) when (fault is FileNotFoundException or DirectoryNotFoundException)
        {
            return Bad<T>(path, StorageTexts.NoSuchFile);
        }
        catch (Exception fault) when (FileFault.IsExpected(fault))
        {
            return Bad<T>(path, StorageTexts.Unreadable(Directory.Exists(path) ? "it is a folder" : FileFault.Reason(fault)));
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(held);
        }
    }

    private static int Fill(string path, ref byte[] held, int mostBytes)
    {
        using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0);
        int length = 0;
        int read;
        while (length <= mostBytes && (read = stream.Read(held.AsSpan(length))) > 0)
        {
            length += read;
            held = length < held.Length ? held : Doubled(held);
        }

        return length;
    }

    private static byte[] Doubled(byte[] full)
    {
        byte[] twice = ArrayPool<byte>.Shared.Rent(2 * full.Length);
        full.CopyTo(twice, 0);
        ArrayPool<byte>.Shared.Return(full);
        return twice;
    }

    private static FileRead<T> Bad<T>(string path, string message)
        where T : class => new(null, [FileProblem.Whole(path, message)]);
}
