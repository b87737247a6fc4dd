using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Storage.Yaml;

/// <summary>Notes that a director types in the names of the choir, as files name them: those are scientific whatever the setting.</summary>
internal static class TypedNotes
{
    /// <summary>The value as files write it; what is no note in the choir's names stays as it is, and may be one in those of files.</summary>
    internal static string ForFile(NoteNaming notes, string field, string value) => field switch
    {
        "start" or "pitch" => notes.TryParse(value, out Pitch pitch) ? pitch.ToAscii() : value,
        "region" => PitchRangeText.Parse(value, notes) is { Ok: true } region ? PitchRangeText.Write(region.Value) : value,
        _ => value,
    };
}
