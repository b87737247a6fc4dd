namespace WarmupConsole.Storage.MusicXml;

/// <summary>How large a score may be. A file beyond these is no choral score; each limit is stated in docs/repertoire.md.</summary>
internal static class MusicXmlLimits
{
    /// <summary>Bytes of a file, and of the score inside a container once unpacked.</summary>
    internal const int MostBytes = 32 * 1024 * 1024;

    /// <summary>Bytes of the list of contents of a container.</summary>
    internal const int MostContainerBytes = 64 * 1024;

    /// <summary>Files in a container.</summary>
    internal const int MostEntries = 1_000;

    internal const int MostParts = 200;

    internal const int MostBars = 10_000;

    internal const int MostNotes = 500_000;

    /// <summary>Characters of one name, word or number.</summary>
    internal const int LongestText = 1_000;

    /// <summary>Quarter notes of one duration.</summary>
    internal const double LongestQuarters = 4_096;
}
