using WarmupConsole.Music.Pitches;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Choirs;

/// <summary>What choir.yaml may hold, and a line of ranges.jsonl.</summary>
public static class ChoirFields
{
    private static readonly Choices<int> Notes = new([.. NoteNaming.All.Index().Select(naming => (naming.Item.Id, naming.Index))]);

    private static readonly Field Extreme = Field.Text("extreme", "What the part can sing at all, such as F3-D5.");
    private static readonly Field Comfortable = Field.Text("comfortable", "What it sings with ease; within extreme.");

    private static readonly FieldTable Dated = new(
        "a dated range",
        Field.Date("from", "The first day it counts.").Must,
        Extreme.Must,
        Comfortable.Must);

    private static readonly FieldTable Part = new(
        "a part",
        Field.Id("id", "As plans name it.").Must,
        Field.Text("name", "As it is shown."),
        Field.List("letters", new(1, 12, "spellings"), new FieldShape.Text(), "What is typed for it in a mark."),
        Field.List("ranges", new(1, 200, "entries"), Dated, "Ranges that count from a day on; history stays."),
        Extreme,
        Comfortable,
        Field.YesNo("start", "The ranges are from a table and not yet this part's own."),
        Field.List("groups", new(0, 12, "groups"), new FieldShape.Id(), "Such as women, men, upper, lower."),
        Field.Whole("singers", new(0, 500, "singers"), "How many there are."),
        Field.Whole("placement", new(-3, 3, "octaves"), "Octaves from the written pattern; men usually -1."))
    {
        Rules = [new FieldRule.Unless("ranges", ["extreme", "comfortable"])],
    };

    private static readonly FieldTable Concert = new(
        "a concert",
        Field.Date("date", "Its day.").Must,
        Field.Text("title", "As it is shown."));

    private static readonly FieldTable Mark = new(
        "a mark",
        Field.Id("id", "As the log keeps it.").Must,
        Field.List("spellings", new(0, 20, "spellings"), new FieldShape.Text(), "What is typed for it."),
        Field.Text("words", "As it is shown."),
        Field.YesNo("praise", "It says that something went well."),
        Field.YesNo("effort", "It says that a voice had too much to do: the next plan spares it."));

    public static FieldTable Choir { get; } = new(
        "choir.yaml",
        Field.Format,
        Field.Text("name", "Of the choir.").Must,
        Field.Text("town", "Where it sings."),
        Field.YesNo("demo", "Nothing is written to this folder."),
        Field.Whole("rehearsal", new(30, 300, "minutes"), "How long a rehearsal lasts."),
        Field.Choice("notes", Notes, "How notes are named on the screen and in what is typed."),
        Field.List("parts", new(1, 16, "parts"), Part, "From high to low.").Must,
        Field.List("concerts", new(0, 100, "concerts"), Concert, "What is prepared for."),
        Field.List("marks", new(0, 50, "marks"), Mark, "Kinds of marks of one's own."));

    /// <summary>One line of ranges.jsonl.</summary>
    public static FieldTable MeasuredRange { get; } = new(
        "a line of ranges.jsonl",
        Field.Format,
        Field.Id("part", "Id of the part.").Must,
        Field.Date("from", "The first day it counts.").Must,
        Extreme.Must,
        Comfortable.Must);
}
