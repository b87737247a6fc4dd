using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Folders;

/// <summary>
/// Writes several files together: all of them, or none. Each is written beside its place first and then renamed, so that no half file ever
/// stands under a name that was asked for.
/// </summary>
public static class FilesTogether
{
    /// <summary>So many first bytes tell what kind of file it is: "MThd", "&lt;?xm", "&lt;!DO".</summary>
    private const int KindBytes = 4;

    /// <summary>Null, or what stands in the way; then nothing is left behind.</summary>
    /// <param name="files">Paths and contents.</param>
    /// <param name="overwrite">True to write over older files of the same kind, and over nothing else.</param>
    public static FileProblem? Write(IReadOnlyList<(string Path, byte[] Bytes)> files, bool overwrite)
    {
        ArgumentNullException.ThrowIfNull(files);
        foreach ((int index, (string path, byte[] bytes)) in files.Index())
        {
            bool isTwice = files.Take(index).Any(file => SamePlace(file.Path, path));
            if ((isTwice ? StorageTexts.TwoFilesOneName : WhyNot(path, bytes, overwrite)) is { } reason)
            {
                return FileProblem.Whole(path, reason);
            }
        }

        List<(string Beside, string Path)> written = [];
        try
        {
            return WriteBeside(files, written) ?? MoveAll(written, overwrite);
        }
        finally
        {
            written.ForEach(file => Remove(file.Beside));
        }
    }

    private static bool SamePlace(string one, string other) =>
        string.Equals(Path.GetFullPath(one), Path.GetFullPath(other), StringComparison.OrdinalIgnoreCase);

    private static string? WhyNot(string path, byte[] bytes, bool overwrite) => (Directory.Exists(path), File.Exists(path)) switch
    {
        (true, _) => StorageTexts.IsFolder,
        (_, false) => null,
        _ when !overwrite => StorageTexts.ThereUnlessForced,
        _ => IsSameKind(path, bytes) ? null : StorageTexts.OtherKind,
    };

    private static bool IsSameKind(string path, byte[] bytes)
    {
        try
        {
            if (new FileInfo(path).Length < KindBytes) // devices and pipes have no length, and may not be waited for
            {
                return false;
            }

            using FileStream stream = File.OpenRead(path);
            byte[] first = new byte[KindBytes];
            stream.ReadExactly(first);
            return first.SequenceEqual(bytes.Take(KindBytes));
        }
        catch (Exception fault) when (FileFault.IsExpected(fault))
        {
            return false;
        }
    }

    private static FileProblem? WriteBeside(IReadOnlyList<(string Path, byte[] Bytes)> files, List<(string Beside, string Path)> written)
    {
        foreach ((string path, byte[] bytes) in files)
        {
            try
            {
                string beside = FreeNameBeside(path);
                using FileStream stream = new(beside, FileMode.CreateNew, FileAccess.Write, FileShare.None);
                written.Add((beside, path));
                stream.Write(bytes);
                stream.Flush(flushToDisk: true);
            }
            catch (Exception fault) when (FileFault.IsExpected(fault))
            {
                return FileProblem.Whole(path, StorageTexts.Unwritable(FileFault.Reason(fault)));
            }
        }

        return null;
    }

    private static string FreeNameBeside(string path) =>
        Enumerable.Range(1, int.MaxValue).Select(number => $"{path}.{number}.part").First(beside => !Path.Exists(beside));

    private static FileProblem? MoveAll(List<(string Beside, string Path)> written, bool overwrite)
    {
        List<string> moved = [];
        foreach ((string beside, string path) in written)
        {
            try
            {
                File.Move(beside, path, overwrite);
                moved.Add(path);
            }
            catch (Exception fault) when (FileFault.IsExpected(fault))
            {
                moved.ForEach(Remove);
                return FileProblem.Whole(path, StorageTexts.Unwritable(FileFault.Reason(fault)));
            }
        }

        return null;
    }

    private static void Remove(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception fault) when (FileFault.IsExpected(fault))
        {
            // It stays beside the place it was meant for; the reason why nothing can be done there was told.
        }
    }
}
