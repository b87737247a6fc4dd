using System.Globalization;
using WarmupConsole.Music.Repertoire;
using WarmupConsole.Storage.MusicXml;

namespace WarmupConsole.Tests.Storage.MusicXml;

/// <summary>Every value of the tables beside the scores, whose rules Scores/README.md states.</summary>
public sealed class ScoreTableTests
{
    private const string Unlisted = "(not in part-list)";

    public static TheoryData<string> Files => [.. ScoreTable.Rows("ranges.csv").Select(row => row["file"]).Distinct()];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_part_has_the_range_of_the_table(string file)
    {
        ScoreFile read = ScoreTable.Read(file);
        IReadOnlyDictionary<string, string>[] rows = [.. ScoreTable.Rows("ranges.csv").Where(row => row["file"] == file)];
        if (rows[0]["error"].Length > 0)
        {
            Assert.Null(read.Score);
            Assert.NotEmpty(read.Problems);
            return;
        }

        Assert.True(read.IsWhole, string.Join('\n', read.Problems));
        Assert.Equal(rows.Length, read.Score!.Parts.Count);
        Assert.All(rows.Zip(read.Score.Parts), pair =>
        {
            IReadOnlyDictionary<string, string> got = Row(pair.Second);
            Assert.All(got, cell => Assert.Equal((cell.Key, pair.First[cell.Key]), (cell.Key, cell.Value)));
        });
    }

    [Fact]
    public void Every_voice_of_a_part_with_several_has_the_range_of_the_table()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = ScoreTable.Rows("ranges-by-voice.csv");
        foreach (IGrouping<string, IReadOnlyDictionary<string, string>> file in rows.GroupBy(row => row["file"]))
        {
            Score score = ScoreTable.Read(file.Key).Score!;
            foreach (IReadOnlyDictionary<string, string> row in file)
            {
                ScorePart part = score.Parts.Single(part => part.Id == row["part_id"]);
                NoteRange range = NoteRange.Of(part.Notes.Where(note => $"{note.Staff}" == row["staff"] && note.Voice == row["voice"]))!;
                Assert.All(Ends(part, range), cell => Assert.Equal((row["part_id"], row["voice"], cell.Name, row[cell.Name]), (row["part_id"], row["voice"], cell.Name, cell.Value)));
            }
        }

        Assert.Equal(
            rows.Select(row => (row["file"], row["part_id"])).Distinct(),
            ScoreTable.Rows("ranges.csv").Where(row => row["error"].Length == 0).Select(row => row["file"]).Distinct()
                .SelectMany(file => ScoreTable.Read(file).Score!.Parts.Where(part => part.Voices.Count > 1).Select(part => (file, part.Id))));
    }

    [Fact]
    public void Notes_beyond_the_usual_ranges_are_those_of_the_table() => Assert.All(ScoreTable.Rows("beyond.csv"), row =>
    {
        ScorePart part = ScoreTable.Read(row["file"]).Score!.Parts.Single(part => part.Id == row["part_id"]);
        (int low, int high) = (Number(row["low"]), Number(row["high"]));
        PartNote[] above = [.. part.Notes.Where(note => note.Midi > high)];
        PartNote[] below = [.. part.Notes.Where(note => note.Midi < low)];
        Assert.Equal(
            (row["notes_above"], row["notes_below"], row["bars_above"], row["bars_below"]),
            ($"{above.Length}", $"{below.Length}", Bars(part, above), Bars(part, below)));
    });

    private static Dictionary<string, string> Row(ScorePart part)
    {
        Dictionary<string, string> row = new()
        {
            ["part_id"] = part.Id,
            ["part_name"] = part.Name.Length > 0 ? part.Name : Unlisted,
            ["tied_continuations"] = Count(part, NoteTraits.TieStop),
            ["grace"] = Count(part, NoteTraits.Grace),
            ["chord_members"] = Count(part, NoteTraits.Chord),
            ["cue_skipped"] = $"{part.CueNotes}",
            ["unpitched_skipped"] = $"{part.UnpitchedNotes}",
            ["measures"] = $"{part.BarNumbers.Count}",
        };
        if (part.Name.StartsWith('\uFFFD'))
        {
            row.Remove("part_name"); // declared in the file and never expanded, as the table's reader did
        }

        foreach ((string name, string value) in NoteRange.Of(part.Notes) is { } range ? Ends(part, range) : [])
        {
            row[name] = value;
        }

        row["written_lowest_midi"] = part.Notes.Count == 0 ? "" : $"{part.Notes.Min(note => note.WrittenMidi)}";
        row["written_highest_midi"] = part.Notes.Count == 0 ? "" : $"{part.Notes.Max(note => note.WrittenMidi)}";
        return row;
    }

    private static IEnumerable<(string Name, string Value)> Ends(ScorePart part, NoteRange range) =>
    [
        ("lowest_midi", $"{range.Lowest.Midi}"),
        ("lowest", range.Lowest.Pitch.ToAscii()),
        ("highest_midi", $"{range.Highest.Midi}"),
        ("highest", range.Highest.Pitch.ToAscii()),
        ("notes", $"{range.Count}"),
        ("bar_of_first_highest", part.BarNumbers[range.Highest.Bar]),
        ("bar_index_of_first_highest", $"{range.Highest.Bar + 1}"),
        ("bar_of_first_lowest", part.BarNumbers[range.Lowest.Bar]),
        ("bar_index_of_first_lowest", $"{range.Lowest.Bar + 1}"),
    ];

    private static string Count(ScorePart part, NoteTraits trait) => $"{part.Notes.Count(note => note.Is(trait))}";

    private static string Bars(ScorePart part, IEnumerable<PartNote> notes) => string.Join(' ', notes.Select(note => part.BarNumbers[note.Bar]).Distinct());

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
