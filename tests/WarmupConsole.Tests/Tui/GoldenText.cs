using System.Runtime.CompilerServices;

namespace WarmupConsole.Tests.Tui;

/// <summary>Compares text with a file under Golden. A missing file fails; WARMUP_ACCEPT=1 writes what was got.</summary>
internal static class GoldenText
{
    private static string Folder([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "..", "Golden");

    /// <summary>A page under docs that the program writes.</summary>
    internal static string Docs(string page) => Path.Combine(Folder(), "..", "..", "..", "docs", page);

    internal static void Check(string name, string got) => CheckFile(Path.Combine(Folder(), name), got);

    internal static void CheckFile(string path, string got)
    {
        if (Environment.GetEnvironmentVariable("WARMUP_ACCEPT") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, got);
        }

        string? expected = File.Exists(path) ? File.ReadAllText(path) : null;
        if (expected != got)
        {
            File.WriteAllText(path + ".actual", got);
            Assert.Fail($"{(expected is null ? "There is no golden" : "The text differs from the golden")} {Path.GetFullPath(path)}.\n"
                + $"Got (also in {Path.GetFileName(path)}.actual):\n{got}\nIf it is right, accept it with WARMUP_ACCEPT=1 and look at the difference in version control.");
        }
    }
}
