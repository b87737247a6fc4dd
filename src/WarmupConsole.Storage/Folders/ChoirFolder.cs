using System.Text;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Choirs;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Plans;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Folders;

/// <summary>The folder of one choir. Its files are found by where they stand; no path is ever taken from what a file holds.</summary>
public sealed class ChoirFolder
{
    private const string Plans = "plans";
    private const string Sessions = "sessions";
    private const string ExerciseFiles = "exercises";
    private const string YamlExtension = ".yaml";
    private const string Ranges = "ranges.jsonl";
    private const string BuiltInChoir = "built-in/choir.yaml";
    private const string BuiltInPlan = "built-in/plan.yaml";

    private ChoirFolder(string root, string writeRoot, Choir choir, string yaml, ExerciseShelf exercises)
    {
        (Root, WriteRoot, Choir, ChoirYaml, Exercises) = (root, writeRoot, choir, yaml, exercises);
    }

    public string Root { get; }

    /// <summary>Where plans and sessions are written: the root, or the settings folder for a demo choir.</summary>
    public string WriteRoot { get; }

    public Choir Choir { get; }

    /// <summary>
    /// The choir for the session log: choir.yaml as it is, or, where the ranges of a part depend on the day, written anew with those
    /// of this day.
    /// </summary>
    public string ChoirYaml { get; }

    /// <summary>Where accepted changes of ranges are written.</summary>
    public string RangesPath => Path.Combine(WriteRoot, Ranges);

    /// <summary>The catalogue and the director's own.</summary>
    public ExerciseShelf Exercises { get; }

    public string SessionsFolder => Path.Combine(WriteRoot, Sessions);

    public PlanContext Context => new(Exercises, Choir);

    /// <summary>The plans, oldest first by the date in their name; names without a date come before. In a demo one's own come last.</summary>
    public IReadOnlyList<string> PlanPaths => Listed(Plans, YamlExtension, path => (DateIn(path) is not null ? "1" : "0") + Path.GetFileName(path));

    /// <summary>The plan with the latest date in its name, or null when there is none.</summary>
    public string? NewestPlan => PlanPaths.Count == 0 ? null : PlanPaths[^1];

    /// <summary>The plan whose file is named so, with or without its ending; null when there is none.</summary>
    public string? PlanNamed(string name) => PlanPaths.LastOrDefault(path => Path.GetFileName(path) == name || Path.GetFileNameWithoutExtension(path) == name);

    /// <summary>The session logs, oldest first. In a demo one's own come last, whatever their date: the demo's are its past.</summary>
    public IReadOnlyList<string> SessionPaths => Listed(Sessions, SessionLogs.LogFormat.FileExtension, path => Path.GetFileName(path));

    /// <summary>The choir folder that a plan stands in: the one above plans/.</summary>
    public static string RootOf(string planPath) =>
        Path.GetDirectoryName(Path.GetDirectoryName(Path.GetFullPath(planPath))) ?? Path.GetFullPath(planPath);

    /// <summary>Reads choir.yaml, ranges.jsonl and the director's own exercises; or everything that is wrong with any of them.</summary>
    /// <param name="root">The folder.</param>
    /// <param name="settings">Where a demo choir's files are written.</param>
    /// <param name="day">The day whose ranges count; null takes the newest.</param>
    public static FileRead<ChoirFolder> Open(string root, SettingsFolder settings, DateOnly? day = null)
    {
        if (!Directory.Exists(root))
        {
            return new(null, [FileProblem.Whole(root, StorageTexts.NoSuchFolder)]);
        }

        string choirPath = Path.Combine(root, ChoirFile.Name);
        FileRead<byte[]> bytes = BoundedFile.Read(choirPath, Utf8Text.MostBytes);
        FileRead<Choir> choir = bytes.IsGood ? ChoirFile.Read(choirPath, bytes.Value) : new(null, bytes.Problems);
        string writeRoot = choir.Value?.Demo == true ? settings.DemoFolder(root) : root;
        FileRead<ExerciseShelf> exercises = ReadExercises(root, writeRoot);
        if (!choir.IsGood || !exercises.IsGood)
        {
            return new(null, [.. choir.Problems, .. exercises.Problems]);
        }

        return Finish(new(root, writeRoot, choir.Value, Text(bytes.Value!), exercises.Value), day);
    }

    /// <summary>The choir that comes with the program, for a director without a folder yet; what it writes goes to the settings folder.</summary>
    public static FileRead<ChoirFolder> OpenBuiltIn(SettingsFolder settings, DateOnly? day = null)
    {
        byte[] bytes = EmbeddedFile.Read(BuiltInChoir);
        FileRead<Choir> choir = ChoirFile.Read(BuiltInChoir, bytes);
        string root = settings.DemoFolder("built-in");
        FileRead<ExerciseShelf> exercises = ReadExercises(root, root);
        return choir.IsGood && exercises.IsGood
            ? Finish(new(root, root, choir.Value, Text(bytes), exercises.Value), day)
            : new(null, [.. choir.Problems, .. exercises.Problems]);
    }

    /// <summary>The date that a plan's name begins with, or null: it holds where the plan says none inside.</summary>
    public static DateOnly? DateIn(string path) => Path.GetFileName(path) is { Length: >= DayText.Length } name
        && DayText.TryRead(name[..DayText.Length], out DateOnly date) ? date : null;

    /// <summary>Reads a plan and looks its names up in this choir.</summary>
    public FileRead<LoadedPlan> ReadPlan(string path)
    {
        FileRead<byte[]> bytes = BoundedFile.Read(path, Utf8Text.MostBytes);
        return bytes.IsGood ? ReadPlan(path, bytes.Value) : new(null, bytes.Problems);
    }

    /// <summary>The plan that comes with the program; it uses nothing but the catalogue.</summary>
    public FileRead<LoadedPlan> ReadBuiltInPlan() => ReadPlan(BuiltInPlan, EmbeddedFile.Read(BuiltInPlan));

    /// <summary>Where the plan of a day is written.</summary>
    public string PlanPathFor(DateOnly date) =>
        Path.Combine(WriteRoot, Plans, DayText.Write(date) + YamlExtension);

    /// <summary>Writes a plan to a file that is not there yet; null, or why it could not.</summary>
    public static string? WritePlan(string path, Plan plan) => NewFile.Write(path, Encoding.UTF8.GetBytes(PlanFile.Write(plan)));

    /// <summary>
    /// Where an edited plan is written: its own file, or the file that a plan of a demo, or one built in, has among one's own.
    /// </summary>
    public string EditedPathFor(string path, DateOnly date)
    {
        ArgumentNullException.ThrowIfNull(path);
        return path.Length == 0 || path == BuiltInPlan ? PlanPathFor(date)
            : WriteRoot == Root || Path.GetFullPath(path).StartsWith(Path.GetFullPath(WriteRoot), StringComparison.Ordinal) ? path
            : Path.Combine(WriteRoot, Plans, Path.GetFileName(path));
    }

    /// <summary>
    /// Puts an edited plan in the place of the one it was made from; null, or why not. A file that says anything else than what was read is
    /// left alone.
    /// </summary>
    /// <param name="path">Where.</param>
    /// <param name="loaded">The text that was read from there; null for a file that must not be there yet.</param>
    /// <param name="yaml">The new text.</param>
    public static string? SavePlan(string path, string? loaded, string yaml)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(yaml);
        if (loaded is null)
        {
            return NewFile.Write(path, bytes);
        }

        FileRead<byte[]> now = BoundedFile.Read(path, Utf8Text.MostBytes);
        return now.IsGood && Text(now.Value) == loaded ? Exchange(path, bytes) : StorageTexts.ChangedMeanwhile;
    }

    private static string? Exchange(string path, byte[] bytes)
    {
        string beside = path + ".new";
        try
        {
            File.Delete(beside);
            if (NewFile.Write(beside, bytes) is { } trouble)
            {
                return trouble;
            }

            File.Move(beside, path, overwrite: true);
            return null;
        }
        catch (Exception fault) when (FileFault.IsExpected(fault))
        {
            return StorageTexts.Unwritable(FileFault.Reason(fault));
        }
    }

    /// <summary>Where a new exercise of one's own is written: a file for it alone.</summary>
    public string ExercisePathFor(string id) => Path.Combine(WriteRoot, ExerciseFiles, id + YamlExtension);

    /// <summary>Writes an exercise to a file that is not there yet; null, or why it could not.</summary>
    public static string? WriteExercise(string path, Exercise exercise) => NewFile.Write(path, Encoding.UTF8.GetBytes(ExerciseFile.Write([exercise])));

    /// <summary>Adds the ranges that the console wrote, and takes those of the day.</summary>
    private static FileRead<ChoirFolder> Finish(ChoirFolder written, DateOnly? day)
    {
        FileRead<IReadOnlyList<MeasuredRange>> measured = RangesFile.Load(written.RangesPath);
        if (!measured.IsGood)
        {
            return new(null, measured.Problems);
        }

        Choir choir = RangesFile.Join(written.Choir, measured.Value).AsOf(day ?? DateOnly.MaxValue);
        bool isAsWritten = choir.Parts.All(part => part.History.Count <= 1);
        string yaml = isAsWritten ? written.ChoirYaml : ChoirFile.Write(choir.WithoutHistory());
        return new(new(written.Root, written.WriteRoot, choir, yaml, written.Exercises), []);
    }

    private FileRead<LoadedPlan> ReadPlan(string path, byte[] bytes)
    {
        FileRead<Plan> plan = PlanFile.Read(path, bytes, Context);
        return plan.IsGood ? new(new(plan.Value with { Date = plan.Value.Date ?? DateIn(path) }, path, Text(bytes)), []) : new(null, plan.Problems);
    }

    private static FileRead<ExerciseShelf> ReadExercises(string root, string writeRoot)
    {
        ExerciseCollection all = new();
        IEnumerable<string> folders = ((IEnumerable<string>)[root, writeRoot]).Distinct().Select(folder => Path.Combine(folder, ExerciseFiles));
        foreach (string path in folders.SelectMany(folder => FilesIn(folder, YamlExtension).Order(StringComparer.Ordinal)))
        {
            FileRead<byte[]> bytes = BoundedFile.Read(path, Utf8Text.MostBytes);
            all.Add(path, bytes.IsGood ? ExerciseFile.Read(path, bytes.Value) : new(null, bytes.Problems));
        }

        return all.Finish();
    }

    private static string Text(byte[] utf8) => Encoding.UTF8.GetString(utf8).TrimStart('\uFEFF');

    private static IReadOnlyList<string> FilesIn(string folder, string extension)
    {
        try
        {
            return Directory.Exists(folder)
                ? [.. Directory.EnumerateFiles(folder).Where(path => Path.GetExtension(path) == extension)]
                : [];
        }
        catch (Exception fault) when (FileFault.IsExpected(fault))
        {
            return [];
        }
    }


    private IReadOnlyList<string> Listed(string folder, string extension, Func<string, string> order) =>
        [.. FilesIn(Path.Combine(Root, folder), extension).OrderBy(order, StringComparer.Ordinal)
            .Concat(WriteRoot == Root ? [] : FilesIn(Path.Combine(WriteRoot, folder), extension).OrderBy(order, StringComparer.Ordinal))];
}
