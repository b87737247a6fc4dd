namespace WarmupConsole.Tests.Storage;

/// <summary>A folder that goes away with the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    internal string Root { get; } = Directory.CreateTempSubdirectory("storage-test-").FullName;

    internal string PathOf(params string[] names) => Path.Combine([Root, .. names]);

    internal string Write(string text, params string[] names)
    {
        string path = PathOf(names);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public void Dispose() => Directory.Delete(Root, recursive: true);
}
