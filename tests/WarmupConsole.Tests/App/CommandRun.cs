using WarmupConsole.App;
using WarmupConsole.App.Commands;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Tests.Architecture;
using WarmupConsole.Tests.Storage;
using WarmupConsole.Tests.Support;

namespace WarmupConsole.Tests.App;

/// <summary>Runs commands as typed, with settings and choir folders of their own that go away with the test.</summary>
internal sealed class CommandRun : IDisposable
{
    private readonly Composition _composition;

    internal CommandRun()
    {
        VirtualClock clock = new();
        _composition = new()
        {
            Clock = clock,
            Wall = new VirtualWall(clock, new(2027, 2, 16)),
            Settings = new SettingsFolder(Folder.PathOf("settings")),
            CurrentFolder = Folder.Root,
            StartPlayer = _ => throw new InvalidOperationException("the piano fell over"),
        };
    }

    internal static string Demo { get; } = Path.Combine(Repository.Root, "plans-demo");

    internal TemporaryFolder Folder { get; } = new();

    internal string Output { get; private set; } = "";

    internal string Errors { get; private set; } = "";

    internal static string DemoPlan(string name) => Path.Combine(Demo, "plans", name);

    /// <returns>The exit code.</returns>
    internal int Type(params string[] arguments)
    {
        using StringWriter output = new();
        using StringWriter errors = new();
        int code = CommandLine.Run(arguments, _composition, output, errors);
        (Output, Errors) = (output.ToString(), errors.ToString());
        return code;
    }

    public void Dispose() => Folder.Dispose();
}
