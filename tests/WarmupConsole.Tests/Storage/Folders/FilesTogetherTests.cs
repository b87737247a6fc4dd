using WarmupConsole.Storage;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Tests.Storage.Folders;

public sealed class FilesTogetherTests : IDisposable
{
    private static readonly byte[] New = "MThd, newer"u8.ToArray();

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Several_files_are_written_and_nothing_else()
    {
        Assert.Null(FilesTogether.Write([(At("a"), New), (At("b"), [1])], overwrite: false));
        Assert.Equal(["a", "b"], Names());
        Assert.Equal(New, File.ReadAllBytes(At("a")));
    }

    [Fact]
    public void A_file_that_is_there_stays_and_the_other_is_not_written_either()
    {
        folder.Write("mine", "b");
        Assert.Equal(StorageTexts.ThereUnlessForced, Refused((At("a"), New), (At("b"), New)));
        Assert.Equal(["b"], Names());
        Assert.Equal("mine", File.ReadAllText(At("b")));
    }

    [Fact]
    public void By_force_an_earlier_file_of_the_same_kind_is_written_over()
    {
        folder.Write("MThd, older and longer", "a");
        Assert.Null(FilesTogether.Write([(At("a"), New)], overwrite: true));
        Assert.Equal(New, File.ReadAllBytes(At("a")));
        Assert.Equal(["a"], Names());
    }

    [Theory]
    [InlineData("format: 1\nname: a choir")]
    [InlineData("MT")]
    [InlineData("")]
    public void By_force_nothing_of_another_kind_is_written_over(string text)
    {
        folder.Write(text, "a");
        Assert.Equal(StorageTexts.OtherKind, FilesTogether.Write([(At("a"), New)], overwrite: true)!.Message);
        Assert.Equal(text, File.ReadAllText(At("a")));
        Assert.Equal(["a"], Names());
    }

    [Fact]
    public void Where_one_cannot_be_written_none_is()
    {
        folder.Write("a file", "in-the-way");
        Assert.NotNull(FilesTogether.Write([(At("a"), New), (folder.PathOf("in-the-way", "b"), New)], overwrite: false));
        Assert.Contains("its folder does not exist", Refused((At("a"), New), (folder.PathOf("missing", "b"), New)), StringComparison.Ordinal);
        Assert.Equal(["in-the-way"], Names());
    }

    [Fact]
    public void A_folder_that_may_not_be_written_to_is_told()
    {
        if (OperatingSystem.IsWindows() || Environment.IsPrivilegedProcess)
        {
            Assert.Skip("Whoever may write everywhere cannot be refused.");
            return; // never reached: it tells the analyzer that what follows is not for Windows
        }

        string locked = Directory.CreateDirectory(At("locked")).FullName;
        File.SetUnixFileMode(locked, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        Assert.Equal("it cannot be written: this user has no permission for it", Refused((Path.Combine(locked, "a"), New)));
        File.SetUnixFileMode(locked, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        Assert.Empty(Directory.EnumerateFileSystemEntries(locked));
    }

    [Fact]
    public void One_name_for_two_files_and_a_folder_are_refused()
    {
        Assert.Equal(StorageTexts.TwoFilesOneName, Refused((At("a"), New), (folder.PathOf(".", "a"), New)));
        Directory.CreateDirectory(At("there"));
        Assert.Equal(StorageTexts.IsFolder, Refused((At("there"), New)));
        Assert.Equal(["there"], Names());
    }

    [Fact]
    public void What_stands_beside_under_a_name_of_passage_is_left_alone()
    {
        folder.Write("not mine", "a.1.part");
        Assert.Null(FilesTogether.Write([(At("a"), New)], overwrite: false));
        Assert.Equal(["a", "a.1.part"], Names());
        Assert.Equal("not mine", File.ReadAllText(At("a.1.part")));
    }

    private string At(string name) => folder.PathOf(name);

    private string[] Names() => [.. Directory.EnumerateFileSystemEntries(folder.Root).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    private static string Refused(params (string Path, byte[] Bytes)[] files)
    {
        FileProblem? problem = FilesTogether.Write(files, overwrite: false);
        Assert.NotNull(problem);
        return problem.Message;
    }
}
