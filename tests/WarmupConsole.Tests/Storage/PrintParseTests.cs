using CsCheck;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Choirs;
using WarmupConsole.Storage.Decisions;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Needs;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Tests.Storage;

/// <summary>What is written reads back as the same, for every kind of file that we write; plans have theirs beside their examples.</summary>
public sealed class PrintParseTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Any_choir_with_all_its_dated_ranges() => AnyValue.Choir.Sample(
        choir => Assert.Equivalent(choir, Good(ChoirFile.Read("f", Expect.Bytes(ChoirFile.Write(choir)))), strict: true),
        iter: 300);

    [Fact]
    public void Any_exercise_sung_or_counted() => AnyValue.Exercise.Sample(
        exercise => Assert.Equivalent(exercise, Assert.Single(Good(ExerciseFile.Read("f", Expect.Bytes(ExerciseFile.Write([exercise]))))), strict: true),
        iter: 500);

    [Fact]
    public void Any_settings() => Gen.OneOf<MachineSettings>(Gen.Const(new MachineSettings(Port: null)), AnyValue.Text.Select(port => new MachineSettings(port))).Sample(
        settings => Assert.Equal(settings, Good(SettingsFolder.Parse("f", Expect.Bytes(SettingsFolder.Write(settings))))));

    [Fact]
    public void Any_measured_range() => Gen.Select(AnyValue.Id, AnyValue.Day, AnyValue.Range, (id, day, range) => new MeasuredRange(id, day, range)).Sample(
        range => Assert.Equal([range], Good(RangesFile.Read("f", Expect.Bytes(RangesFile.Write(range))))));

    /// <summary>One after the other, as the commands add and end them; in the file of the folder.</summary>
    [Fact]
    public void Any_needs_one_added_after_the_other() => AnyValue.Need.Array[1, 5].Sample(
        needs =>
        {
            NeedsBook book = needs.Aggregate(Empty(), (book, need) => Good(book.With(Fields(need))));
            foreach ((int index, ChoirNeed need) in needs.Index().Where(need => need.Item.Done is not null))
            {
                book = Good(book.WithDone(index + 1, need.Done!.Value));
            }

            Assert.Null(book.Save());
            Assert.Equal(needs, Good(NeedsBook.Open(Good(ChoirFolder.Open(folder.Root, new(folder.PathOf("settings")))))).Needs);
        },
        iter: 200,
        threads: 1);

    [Fact]
    public void Any_decisions_one_after_the_other() => Gen.Select(AnyValue.Day, AnyValue.Id, Gen.Bool, AnyValue.Text, (day, finding, dismissed, why) => new Decision(day, finding, dismissed, why)).Array[1, 5].Sample(
        decisions =>
        {
            ChoirFolder quay = Open();
            Assert.All(decisions, decision => Assert.Null(DecisionsFile.Append(quay, decision)));
            Assert.Equal(decisions, Good(DecisionsFile.Load(quay)));
        },
        iter: 100,
        threads: 1);

    private NeedsBook Empty() => Good(NeedsBook.Open(Open()));

    /// <summary>A folder with nothing but its choir.</summary>
    private ChoirFolder Open()
    {
        File.Delete(folder.PathOf(NeedsFile.Name));
        File.Delete(folder.PathOf(DecisionsFile.Name));
        folder.Write(Samples.Choir, ChoirFile.Name);
        return Good(ChoirFolder.Open(folder.Root, new(folder.PathOf("settings"))));
    }

    /// <summary>What a command would be given for it.</summary>
    private static IReadOnlyList<(string Name, string Value)> Fields(ChoirNeed need)
    {
        (string Name, string? Value)[] fields =
        [
            ("part", need.Who),
            ("pitch", need.Pitch?.ToAscii()),
            ("region", need.Region is { } region ? PitchRangeText.Write(region) : null),
            ("purpose", need.Purpose is { } purpose ? PurposeData.Id(purpose) : null),
            ("piece", need.Piece),
            ("bars", need.Bars),
            ("until", need.Until is { } day ? DayText.Write(day) : null),
        ];
        return [.. fields.Where(field => !string.IsNullOrEmpty(field.Value)).Select(field => (field.Name, field.Value!))];
    }

    private static T Good<T>(FileRead<T> read)
        where T : class
    {
        Assert.Empty(read.Problems);
        return read.Value!;
    }
}
