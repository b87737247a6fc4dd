using System.Text;
using WarmupConsole.Storage.Choirs;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Folders;

/// <summary>Makes the folder of a new choir from the templates inside the program: choir.yaml, a first plan, an example of an exercise.</summary>
public static class NewChoir
{
    private const string Templates = "built-in/new-";

    /// <summary>The day in the templates of plans, which gives way to the real one.</summary>
    private const string DayInTemplates = "date: 2027-01-12";

    /// <summary>One row per voicing, with the plan that suits it.</summary>
    private static readonly (string Voices, string Plan)[] Rows =
    [
        ("satb", "plan"),
        ("sab", "plan"),
        ("ssaa", "plan"),
        ("ttbb", "plan"),
        ("children", "plan-young"),
        ("changing", "plan-young"),
    ];

    /// <summary>The voicings there are templates for.</summary>
    public static IReadOnlyList<string> Voicings { get; } = [.. Rows.Select(row => row.Voices)];

    /// <summary>Where the first plan is written.</summary>
    public static string PlanPath(string root, DateOnly day) => Path.Combine(root, "plans", DayText.Write(day) + ".yaml");

    /// <summary>All files that are written, the choir's own last.</summary>
    public static IReadOnlyList<string> Paths(string root, DateOnly day) =>
        [Path.Combine(root, "exercises", "example.txt"), PlanPath(root, day), Path.Combine(root, ChoirFile.Name)];

    /// <summary>
    /// Writes a new folder, or into one that is empty; null, or why not. choir.yaml comes last, so that a folder that could not
    /// be finished is none of a choir.
    /// </summary>
    /// <param name="root">The folder.</param>
    /// <param name="voices">One of <see cref="Voicings"/>.</param>
    /// <param name="day">The day of the first plan.</param>
    public static FileProblem? Write(string root, string voices, DateOnly day)
    {
        if (WhyNot(root) is { } reason)
        {
            return FileProblem.Whole(root, reason);
        }

        string plan = Encoding.UTF8.GetString(Template(Rows.First(row => row.Voices == voices).Plan));
        byte[][] contents =
        [
            Template("exercises"),
            Encoding.UTF8.GetBytes(plan.Replace(DayInTemplates, "date: " + DayText.Write(day), StringComparison.Ordinal)),
            Template("choir-" + voices),
        ];
        return Paths(root, day).Zip(contents, (path, bytes) => NewFile.Write(path, bytes) is { } fault ? FileProblem.Whole(path, fault) : null)
            .FirstOrDefault(problem => problem is not null);
    }

    private static byte[] Template(string name) => EmbeddedFile.Read($"{Templates}{name}.yaml");

    private static string? WhyNot(string root)
    {
        try
        {
            return File.Exists(root) || (Directory.Exists(root) && Directory.EnumerateFileSystemEntries(root).Any()) ? StorageTexts.NotEmpty : null;
        }
        catch (Exception fault) when (FileFault.IsExpected(fault))
        {
            return StorageTexts.Unreadable(FileFault.Reason(fault));
        }
    }
}
