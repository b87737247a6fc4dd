namespace WarmupConsole.Music.Exercises;

/// <summary>One row per stage: its name in files, and its words on screen.</summary>
public static class StageData
{
    private static readonly (Stage Stage, string Id, string Words)[] Rows =
    [
        (Stage.Body, "body", "body"),
        (Stage.Breathing, "breathing", "breathing"),
        (Stage.Humming, "humming", "humming"),
        (Stage.LipTrill, "lip-trill", "lip trill"),
        (Stage.Slide, "slide", "slide"),
        (Stage.Sung, "sung", "sung"),
        (Stage.Settling, "settling", "settling"),
    ];

    /// <summary>All names as files write them, in the order of a warm-up.</summary>
    public static IReadOnlyList<string> Ids { get; } = [.. Rows.Select(row => row.Id)];

    /// <summary>The name of a stage in files.</summary>
    public static string Id(Stage stage) => Rows[(int)stage].Id;

    /// <summary>The stage as a director reads it.</summary>
    public static string Words(Stage stage) => Rows[(int)stage].Words;

    /// <summary>Finds a stage by its name in files; false for any other text.</summary>
    public static bool TryFind(string id, out Stage stage)
    {
        int row = Array.FindIndex(Rows, r => r.Id == id);
        stage = row < 0 ? default : Rows[row].Stage;
        return row >= 0;
    }
}
