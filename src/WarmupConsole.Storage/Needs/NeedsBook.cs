using System.Text;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Needs;

/// <summary>The needs of a choir with the text they stand in. A change makes a new book; nothing is written before <see cref="Save"/>.</summary>
public sealed class NeedsBook
{
    private readonly string? text;
    private readonly Choir choir;

    private NeedsBook(Choir choir, string path, string? text, IReadOnlyList<ChoirNeed> needs) =>
        (this.choir, FilePath, this.text, Needs) = (choir, path, text, needs);

    /// <summary>In the order of the file; a need is named by its number from 1.</summary>
    public IReadOnlyList<ChoirNeed> Needs { get; }

    /// <summary>Where it is written.</summary>
    public string FilePath { get; }

    /// <summary>How the choir names its notes.</summary>
    public NoteNaming Notes => choir.Notes;

    /// <summary>The needs of a folder; none when there is no file. For a demo choir what was written aside comes first.</summary>
    public static FileRead<NeedsBook> Open(ChoirFolder folder)
    {
        string path = Path.Combine(folder.WriteRoot, NeedsFile.Name);
        string found = File.Exists(path) ? path : Path.Combine(folder.Root, NeedsFile.Name);
        if (!File.Exists(found))
        {
            return new(new NeedsBook(folder.Choir, path, null, []), []);
        }

        FileRead<byte[]> bytes = BoundedFile.Read(found, Utf8Text.MostBytes);
        return bytes.IsGood
            ? Of(folder.Choir, (found, path), Encoding.UTF8.GetString(bytes.Value).TrimStart('\uFEFF'))
            : new(null, bytes.Problems);
    }

    /// <summary>With one need more, whose notes are named as the choir does or as files do; or a problem for each field that may not be, with the option's name in place of a file.</summary>
    public FileRead<NeedsBook> With(IReadOnlyList<(string Name, string Value)> given)
    {
        return WithAsWritten([.. given.Select(field => (field.Name, TypedNotes.ForFile(choir.Notes, field.Name, field.Value)))]);
    }

    /// <summary>The same with notes named as files do.</summary>
    public FileRead<NeedsBook> WithAsWritten(IReadOnlyList<(string Name, string Value)> fields)
    {
        FileRead<NeedsBook> alone = Of(choir, ("", FilePath), NeedsText.Alone(fields));
        if (!alone.IsGood)
        {
            return new(null, [.. alone.Problems.Select(problem => FileProblem.Whole(NeedsText.OptionAt(problem.Line, fields), problem.Message))]);
        }

        FileRead<NeedsBook> added = NeedsText.Added(text, fields) is { } longer ? Of(choir, (FilePath, FilePath), longer) : new(null, []);
        return added.IsGood && added.Value.Needs.SequenceEqual([.. Needs, .. alone.Value.Needs])
            ? added
            : new(null, [FileProblem.Whole(FilePath, StorageTexts.NeedsNotLast)]);
    }

    /// <summary>With one need done, by its number from 1; or why not.</summary>
    public FileRead<NeedsBook> WithDone(int number, DateOnly day)
    {
        if (number < 1 || number > Needs.Count)
        {
            return new(null, [FileProblem.Whole(FilePath, StorageTexts.NoSuchNeed(number, Needs.Count))]);
        }

        return Needs[number - 1].Done is not null
            ? new(null, [FileProblem.Whole(FilePath, StorageTexts.NeedIsDone(number))])
            : Of(choir, (FilePath, FilePath), NeedsText.WithDone(text!, number - 1, DayText.Write(day)));
    }

    /// <summary>Writes the file whole beside the old one and puts it in its place; null, or why it could not.</summary>
    public string? Save()
    {
        string beside = FilePath + ".new";
        try
        {
            if (File.Exists(beside))
            {
                File.Delete(beside);
            }

            if (NewFile.Write(beside, Encoding.UTF8.GetBytes(text ?? "")) is { } trouble)
            {
                return trouble;
            }

            File.Move(beside, FilePath, overwrite: true);
            return null;
        }
        catch (Exception fault) when (FileFault.IsExpected(fault))
        {
            return StorageTexts.Unwritable(FileFault.Reason(fault));
        }
    }

    private static FileRead<NeedsBook> Of(Choir choir, (string Read, string Write) paths, string text)
    {
        FileRead<IReadOnlyList<ChoirNeed>> read = NeedsFile.Read(paths.Read, Encoding.UTF8.GetBytes(text), choir);
        return read.IsGood ? new(new NeedsBook(choir, paths.Write, text, read.Value), []) : new(null, read.Problems);
    }
}
