namespace WarmupConsole.Music.Sounding;

/// <summary>The choices about the piano as files write them, and the styles as they are shown.</summary>
public static class PianoData
{
    private static readonly (AccompanimentStyle Style, string Id, string Words)[] Rows =
    [
        (AccompanimentStyle.CueOnly, "cue-only", "cue chords only"),
        (AccompanimentStyle.Melody, "melody", "the melody"),
        (AccompanimentStyle.Block, "block", "whole chords"),
        (AccompanimentStyle.Broken, "broken", "broken chords"),
        (AccompanimentStyle.BassAndChord, "bass-and-chord", "bass and chord"),
        (AccompanimentStyle.Drone, "drone", "a drone"),
    ];

    /// <summary>The styles, from the least to the most that sounds.</summary>
    public static IReadOnlyList<(string Name, AccompanimentStyle Value)> Styles { get; } = [.. Rows.Select(row => (row.Id, row.Style))];

    /// <summary>The ways to the next key.</summary>
    public static IReadOnlyList<(string Name, BetweenKeys Value)> Ways { get; } =
        [("tonic", BetweenKeys.Tonic), ("dominant", BetweenKeys.Dominant), ("chromatic", BetweenKeys.Chromatic)];

    /// <summary>Which beats are tapped.</summary>
    public static IReadOnlyList<(string Name, Click Value)> Clicks { get; } =
        [("none", Click.None), ("count-in", Click.CountIn), ("every-beat", Click.EveryBeat)];

    /// <summary>As it is shown: "broken chords".</summary>
    public static string Words(AccompanimentStyle style) => Rows[(int)style].Words;

    /// <summary>As files and logs write it: "bass-and-chord".</summary>
    public static string Id(AccompanimentStyle style) => Rows[(int)style].Id;

    /// <summary>The one style whose name begins with these letters; null where none does, or several do.</summary>
    public static AccompanimentStyle? Find(string letters) =>
        Rows.Where(row => letters.Length > 0 && row.Id.StartsWith(letters, StringComparison.OrdinalIgnoreCase)).ToArray() is [var only] ? only.Style : null;
}
