using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Scores;

/// <summary>What a mapping file (scores/NAME.yaml) may hold.</summary>
public static class ScoreMapFields
{
    /// <summary>The value of 'part' for a line that the choir does not sing.</summary>
    public const string None = "none";

    private static readonly FieldTable Line = new(
        "a line of the score",
        Field.Text("score", "Id of the part in the score, such as P1; or its place, such as #1.").Must,
        Field.Text("voice", "One voice of it where several share a staff, such as 1; of a later staff 2/1."),
        Field.Text("name", "The part's name in the score, for who reads this."),
        Field.Id("part", "The part of the choir that sings it, or none.").Must);

    public static FieldTable Map { get; } = new(
        "a mapping file",
        Field.Format,
        Field.Text("language", "Language of the words where the score does not say it, such as la, de or it."),
        Field.List("lines", new(1, 400, "lines"), Line, "Which part of the choir sings which line of the score.").Must);
}
