using System.Reflection;

namespace WarmupConsole.Storage.Folders;

/// <summary>The files kept inside the program, by the names that the project gives them.</summary>
internal static class EmbeddedFile
{
    private static readonly Assembly Program = typeof(EmbeddedFile).Assembly;

    internal static IEnumerable<string> NamesUnder(string prefix) =>
        Program.GetManifestResourceNames().Where(name => name.StartsWith(prefix, StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    internal static byte[] Read(string name)
    {
        using Stream stream = Program.GetManifestResourceStream(name)!;
        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
