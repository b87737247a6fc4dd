namespace WarmupConsole.Tests.App;

/// <summary>Commands as typed in a choir folder that may be written to: a copy of the demo, without its sessions.</summary>
internal sealed class ToolRun : IDisposable
{
    private readonly CommandRun run = new();

    internal ToolRun()
    {
        foreach (string path in Directory.EnumerateFiles(CommandRun.Demo, "*.yaml", SearchOption.AllDirectories))
        {
            Put(Path.GetRelativePath(CommandRun.Demo, path), File.ReadAllText(path).Replace("demo: true", "demo: false", StringComparison.Ordinal));
        }
    }

    internal string Output => run.Output;

    internal string Errors => run.Errors;

    internal string PathOf(string name) => Path.Combine(run.Folder.Root, name);

    internal string Put(string name, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(PathOf(name))!);
        File.WriteAllText(PathOf(name), text);
        return PathOf(name);
    }

    /// <returns>The exit code.</returns>
    internal int Call(params string[] arguments) => run.Type(arguments);

    public void Dispose() => run.Dispose();
}
