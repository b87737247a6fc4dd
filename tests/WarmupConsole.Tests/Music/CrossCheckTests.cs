using System.Globalization;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Tests.Architecture;

namespace WarmupConsole.Tests.Music;

/// <summary>The arithmetic of pitches and keys against a general-purpose music theory library, row by row: Reference/theory.mjs prints the table and says how.</summary>
public sealed class CrossCheckTests
{
    private static readonly ILookup<string, string[]> Table =
        File.ReadLines(Path.Combine(Repository.Root, "tests", "WarmupConsole.Tests", "Music", "Reference", "theory.csv"))
            .Skip(1).Select(line => line.Split(',')).ToLookup(row => row[0], row => row[1..]);

    [Fact]
    public void Every_note_has_the_midi_number_and_the_frequency_of_the_table() => Rows("note", 71, row =>
    {
        Pitch pitch = Pitch.Parse(row[0]);
        Assert.Equal(Whole(row[1]), pitch.Midi);
        Assert.Equal(row[2], Tuning.Iso16.FrequencyHertz(pitch.Midi).ToString("0.0000", CultureInfo.InvariantCulture));
        Assert.Equal(row[0], pitch.ToAscii());
    });

    [Fact]
    public void Fifteen_majors_and_fifteen_minors_have_the_signature_of_the_table() =>
        Rows("signature", 30, row => Assert.Equal(Whole(row[1]), KeyOf(row[0]).Fifths));

    [Fact]
    public void Every_scale_is_spelled_as_in_the_table() =>
        Rows("scale", 72, row => Assert.Equal(row[1], Names(KeyOf(row[0]).Scale(4))));

    [Fact]
    public void Every_dominant_seventh_is_spelled_as_in_the_table() =>
        Rows("dominant", 30, row => Assert.Equal(row[1], Names(KeyOf(row[0]).DominantSeventh(4))));

    [Fact]
    public void Every_transposition_leads_to_the_note_of_the_table() => Rows("transpose", 92, row =>
    {
        string[] words = row[0].Split(' ');
        Assert.Equal(row[1], Pitch.Parse(words[0]).Transpose(new(Whole(words[1]), Whole(words[2]))).ToAscii());
    });

    [Fact]
    public void The_interval_between_two_notes_is_that_of_the_table() => Rows("between", 20, row =>
    {
        string[] notes = row[0].Split(' ');
        Assert.Equal(new(Whole(row[1]), Whole(row[2])), Interval.Between(Pitch.Parse(notes[0]), Pitch.Parse(notes[1])));
    });

    /// <summary>So many rows at least: an empty table proves nothing.</summary>
    private static void Rows(string what, int count, Action<string[]> check)
    {
        Assert.Equal(count, Table[what].Count());
        Assert.All(Table[what], check);
    }

    private static Key KeyOf(string words)
    {
        string[] pair = words.Split(' ');
        Assert.True(ModeData.TryFind(pair[1], out Mode mode));
        return Key.Of(Pitch.Parse(pair[0] + "4"), mode);
    }

    private static string Names(IEnumerable<Pitch> pitches) => string.Join(' ', pitches.Select(pitch => pitch.ToAscii().TrimEnd("0123456789".ToCharArray())));

    private static int Whole(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
