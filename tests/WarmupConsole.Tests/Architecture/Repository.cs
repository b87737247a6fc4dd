namespace WarmupConsole.Tests.Architecture;

/// <summary>The source tree that these tests read, found by walking up from the test program.</summary>
internal static class Repository
{
    private static readonly string[] Products = ["bin", "obj", "artifacts"];

    internal static string Root { get; } = FindRoot();

    internal static string Text(string path) => File.ReadAllText(Path.Combine(Root, path));

    /// <summary>Every C# file below a folder of the tree, without what the build made.</summary>
    internal static IReadOnlyList<SourceFile> Sources(string folder) =>
    [
        .. Directory.EnumerateFiles(Path.Combine(Root, folder), "*.cs", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Root, path).Replace('\\', '/'))
            .Where(path => !path.Split('/').Intersect(Products).Any())
            .Order(StringComparer.Ordinal)
            .Select(SourceFile.Read),
    ];

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "WarmupConsole.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException($"No WarmupConsole.sln above {AppContext.BaseDirectory}: run the tests from within the repository.");
    }
}
