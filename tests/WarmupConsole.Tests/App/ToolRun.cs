using WarmupConsole.App;
using WarmupConsole.App.Commands;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Tests.Architecture;
using WarmupConsole.Tests.Storage;
using WarmupConsole.Tests.Support;

namespace WarmupConsole.Tests.App;

/// <summary>Commands called as from a shell, in a choir folder that may be written to: a copy of the demo.</summary>
internal sealed class ToolRun : IDisposable
{
    private readonly TemporaryFolder folder = new();

    internal ToolRun()
    {
        string demo = Path.Combine(Repository.Root, "plans-demo");
        foreach (string path in Directory.EnumerateFiles(demo, "*.yaml", SearchOption.AllDirectories))
        {
            Put(Path.GetRelativePath(demo, path), File.ReadAllText(path).Replace("demo: true", "demo: false", StringComparison.Ordinal));
        }
    }

    internal string Root => folder.Root;

    /// <summary>What the last call wrote to its output.</summary>
    internal string Output { get; private set; } = "";

    /// <summary>What the last call wrote to its error output.</summary>
    internal string Errors { get; private set; } = "";

    internal string PathOf(string name) => Path.Combine(folder.Root, name);

    internal string Put(string name, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(PathOf(name))!);
        File.WriteAllText(PathOf(name), text);
        return PathOf(name);
    }

    /// <summary>Runs a command in the choir's folder; the exit code.</summary>
    internal int Call(params string[] arguments)
    {
        VirtualClock clock = new();
        Composition composition = new()
        {
            Clock = clock,
            Wall = new VirtualWall(clock),
            Settings = new SettingsFolder(PathOf("settings")),
            CurrentFolder = Root,
            StartPlayer = _ => throw new InvalidOperationException("Nothing is played here."),
        };
        using StringWriter output = new();
        using StringWriter errors = new();
        int code = CommandLine.Run(arguments, composition, output, errors);
        (Output, Errors) = (output.ToString(), errors.ToString());
        return code;
    }

    public void Dispose() => folder.Dispose();
}
