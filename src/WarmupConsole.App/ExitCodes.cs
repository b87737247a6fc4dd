namespace WarmupConsole.App;

/// <summary>What the program's exit code means; the same for every command.</summary>
internal static class ExitCodes
{
    internal const int Ok = 0;

    /// <summary>The command did its work and found something (errors in a plan, damage in a log).</summary>
    internal const int Findings = 1;

    /// <summary>A file, a value or the way the command was called is wrong.</summary>
    internal const int BadInput = 2;

    /// <summary>The program itself failed.</summary>
    internal const int Internal = 70;
}
