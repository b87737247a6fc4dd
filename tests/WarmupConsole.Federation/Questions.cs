using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using DuckDB.NET.Data;

namespace WarmupConsole.Federation;

/// <summary>Runs every statement of docs/federation.md that is marked for DuckDB or for both, in order, and prints results and times as the page shows them.</summary>
internal static partial class Questions
{
    private const int MostRows = 12;

    internal static int Ask(int choirs)
    {
        DirectoryInfo root = Directory.CreateTempSubdirectory("warmup-choirs-");
        try
        {
            SimulatedChoirs.Write(root.FullName, choirs);
            FileInfo[] logs = root.GetFiles("*.jsonl", SearchOption.AllDirectories);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{choirs} choirs, {logs.Length} logs, {logs.Sum(log => log.Length) / 1e6:0} MB"));
            Run(root.FullName);
            return 0;
        }
        finally
        {
            root.Delete(recursive: true);
        }
    }

    private static void Run(string root)
    {
        using DuckDBConnection connection = new("DataSource=:memory:");
        connection.Open();
        foreach (Match statement in Statements().Matches(File.ReadAllText(Page())))
        {
            using DuckDBCommand command = connection.CreateCommand();
            command.CommandText = statement.Groups["sql"].Value.Replace("choirs/", root + "/", StringComparison.Ordinal);
            long start = Stopwatch.GetTimestamp();
            using DuckDBDataReader reader = command.ExecuteReader();
            Print(reader);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\n{Stopwatch.GetElapsedTime(start).TotalSeconds:0.00} s\n"));
        }
    }

    private static void Print(DuckDBDataReader reader)
    {
        string[] columns = [.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetName)];
        Console.WriteLine($"\n| {string.Join(" | ", columns)} |\n|{string.Concat(columns.Select(_ => "---|"))}");
        int rows = 0;
        while (reader.Read())
        {
            if (rows++ < MostRows)
            {
                Console.WriteLine($"| {string.Join(" | ", Enumerable.Range(0, columns.Length).Select(column => Convert.ToString(reader.GetValue(column), CultureInfo.InvariantCulture)))} |");
            }
        }

        Console.WriteLine(rows > MostRows ? $"| ... {rows} rows |" : "");
    }

    private static string Page()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "docs", "federation.md")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return Path.Combine(folder ?? throw new DirectoryNotFoundException("Run it from within the repository: there is no docs/federation.md above the program."), "docs", "federation.md");
    }

    /// <summary>Blocks whose first line is a comment that does not name another engine.</summary>
    [GeneratedRegex("```sql\n(?<sql>(?!-- Spark).*?)```", RegexOptions.Singleline)]
    private static partial Regex Statements();
}
