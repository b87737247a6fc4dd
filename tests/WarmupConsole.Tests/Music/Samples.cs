using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Tests.Music;

/// <summary>Choirs and exercises for the tests of this folder.</summary>
internal static class Samples
{
    /// <summary>Published choir ranges, "amateur" column of an open-source notation program's instrument table.</summary>
    internal static readonly string[] Amateur = ["C4-G5", "G3-D5", "C3-A4", "F2-C4"];

    /// <summary>The same table's "professional" column: the widest band.</summary>
    internal static readonly string[] Professional = ["C4-C6", "E3-F5", "C3-C5", "D2-D4"];

    /// <summary>Published choir ranges, "more conservative", of an open Haskell music theory library.</summary>
    internal static readonly string[] Conservative = ["C4-F5", "G3-C5", "C3-F4", "G2-C4"];

    internal const string FiveNotes = "1:1/2 2:1/2 3:1/2 4:1/2 5 4:1/2 3:1/2 2:1/2 1:3/2 -:1";

    private static readonly string[] Names = ["Soprano", "Alto", "Tenor", "Bass"];

    internal static PitchRange Range(string text) => PitchRangeText.Parse(text).Value;

    /// <summary>Soprano, alto, tenor and bass; the men an octave below the women (common practice).</summary>
    internal static IReadOnlyList<Part> Choir(string[] extreme, string[] comfortable) =>
        [.. Names.Select((name, i) => Part(name, extreme[i], comfortable[i], i < 2 ? 0 : -1))];

    /// <summary>Comfortable is all there is.</summary>
    internal static IReadOnlyList<Part> Choir(string[] range) => Choir(range, range);

    /// <summary>Conservative ranges with ease; at the extreme the amateur ones, for the basses those of an open textbook of integrated musicianship.</summary>
    internal static IReadOnlyList<Part> Choir() => Choir(["C4-G5", "G3-D5", "C3-A4", "E2-D4"], ["C4-F5", "G3-C5", "C3-F4", "G2-C4"]);

    internal static Part Part(string name, string extreme, string comfortable, int placement) => new(
        name.ToLowerInvariant(), name, [], ["everyone", placement == 0 ? "women" : "men"], 8, placement, new(Range(extreme), Range(comfortable)));

    internal static Exercise Exercise(string pattern, Mode mode = Mode.Major) => new()
    {
        Id = "sample",
        Title = "Sample",
        Stage = Stage.Sung,
        Pattern = PatternText.Parse(pattern, mode).Value,
        Mode = mode,
        Tempo = new(Tempo.FromBeatsPerMinute(88), Tempo.FromBeatsPerMinute(66), Tempo.FromBeatsPerMinute(108)),
    };

    /// <summary>Everyone sings the pattern but the parts that a line names: "men" or "alto, bass".</summary>
    internal static Exercise InParts(string pattern, params (string Parts, string Pattern, int Offset)[] voices) => Exercise(pattern) with
    {
        Voices = [.. voices.Select(voice => new VoiceLine(voice.Parts.Split(", "), PatternText.Parse(voice.Pattern).Value!, Beats.FromBeats(voice.Offset)))],
    };

    internal static int[] Midi(IEnumerable<Pitch> pitches) => [.. pitches.Select(pitch => pitch.Midi)];
}
