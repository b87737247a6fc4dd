using System.Security;

namespace WarmupConsole.Storage.Folders;

/// <summary>What the system may refuse, and how it is told.</summary>
internal static class FileFault
{
    internal static bool IsExpected(Exception fault) =>
        fault is IOException or UnauthorizedAccessException or SecurityException or NotSupportedException or ArgumentException;

    internal static string Reason(Exception fault) => fault switch
    {
        UnauthorizedAccessException or SecurityException => "this user has no permission for it",
        DirectoryNotFoundException => "its folder does not exist",
        _ => Yaml.Printable.Line(fault.Message.TrimEnd('.')),
    };
}
