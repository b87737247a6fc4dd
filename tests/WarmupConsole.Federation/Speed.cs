using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using DuckDB.NET.Data;
using WarmupConsole.Storage.SessionLogs;

namespace WarmupConsole.Federation;

/// <summary>The same logs read twice in turn: by DuckDB's JSON reader (the same fields, counted by type) and by the console's (checksums, order and all fields checked).</summary>
internal static class Speed
{
    private const int Rounds = 7;

    private const string Columns = "{format: 'INTEGER', seq: 'BIGINT', type: 'VARCHAR', \"at\": 'VARCHAR', epoch: 'INTEGER', mono: 'BIGINT', step: 'INTEGER', rung: 'INTEGER', tonic: 'VARCHAR', midi: 'INTEGER', "
        + "milliBpm: 'INTEGER', sing: 'VARCHAR[]', low: 'INTEGER[]', high: 'INTEGER[]', whole: 'BOOLEAN', id: 'INTEGER', raw: 'VARCHAR', parts: 'VARCHAR[]', kind: 'VARCHAR', key: 'VARCHAR', keyNamed: 'BOOLEAN', "
        + "pitch: 'INTEGER', place: 'VARCHAR', nanoseconds: 'BIGINT', exercise: 'VARCHAR', keys: 'INTEGER[]'}";

    internal static int Compare(string folder)
    {
        string[] logs = [.. Directory.GetFiles(folder, "*.jsonl").Order(StringComparer.Ordinal)];
        double[] duck = new double[Rounds];
        double[] ours = new double[Rounds];
        (long duckRows, long ourRows) = (0, 0);
        for (int round = 0; round < Rounds; round++)
        {
            (duck[round], duckRows) = Timed(() => Duck(folder));
            (ours[round], ourRows) = Timed(() => Ours(logs));
        }

        Array.Sort(duck);
        Array.Sort(ours);
        Console.WriteLine("| reader | lines | median | least |\n|---|---|---|---|");
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| DuckDB | {duckRows} | {duck[Rounds / 2]:0} ms | {duck[0]:0} ms |\n| console | {ourRows} | {ours[Rounds / 2]:0} ms | {ours[0]:0} ms |"));
        return duckRows == ourRows ? 0 : 1;
    }

    private static (double Milliseconds, long Rows) Timed(Func<long> work)
    {
        long start = Stopwatch.GetTimestamp();
        long rows = work();
        return (Stopwatch.GetElapsedTime(start).TotalMilliseconds, rows);
    }

    private static long Duck(string folder)
    {
        using DuckDBConnection connection = new("DataSource=:memory:");
        connection.Open();
        using DuckDBCommand command = connection.CreateCommand();
        // Sums over every field, so that none of them can be passed over unread.
        command.CommandText = $"SELECT count(*), count(seq), count(type), count(\"at\"), count(mono), count(step), count(rung), count(tonic), count(midi), count(milliBpm), count(sing), count(low), count(high), count(whole), "
            + $"count(id), count(raw), count(parts), count(kind), count(nanoseconds), count(exercise), count(keys) FROM read_json('{folder}/*.jsonl', format = 'newline_delimited', columns = {Columns})";
        using DuckDBDataReader reader = command.ExecuteReader();
        return reader.Read() ? reader.GetInt64(0) : 0;
    }

    private static long Ours(string[] logs) => Partitioner.Create(logs, loadBalance: true).AsParallel().Select(log => (long)SessionLogFile.Read(log).Value!.Records.Count).Sum();
}
