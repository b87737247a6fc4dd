namespace WarmupConsole.Midi.Protocol;

/// <summary>The numbers of docs/player-protocol.md.</summary>
public static class ProtocolConstants
{
    public const int Version = 1;
    public const int LengthBytes = 2;
    public const int HeaderBytes = LengthBytes + 1;
    public const int CheckBytes = 4;
    public const int LongestPayload = 4096;
    public const int NoteBytes = 14;
    public const int MostNotesInFrame = 256;
    public const int MostQueuedNotes = 1024;
    public const int MostSoundingNotes = 256;
    public const int MostQueuedFrames = 256;
    public const int BeatsAhead = 8;

    /// <summary>FNV-1a, 32 bits (Fowler, Noll, Vo): every single changed byte changes it.</summary>
    internal static uint Check(ReadOnlySpan<byte> bytes)
    {
        uint hash = 2166136261;
        foreach (byte one in bytes)
        {
            hash = (hash ^ one) * 16777619;
        }

        return hash;
    }
}
