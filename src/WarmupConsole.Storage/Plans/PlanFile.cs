using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Plans;

/// <summary>Plans in and out, as docs/plan-format.md says. What is written reads back as the same plan.</summary>
public static class PlanFile
{
    /// <param name="file">The file as the director named it, for problems.</param>
    /// <param name="bytes">What it holds.</param>
    /// <param name="context">Exercises and choir that its names must be found in; null to take names as they are.</param>
    public static FileRead<Plan> Read(string file, ReadOnlySpan<byte> bytes, PlanContext? context = null)
    {
        FileRead<MapReader> opened = FormatCheck.Open(file, bytes, PlanFields.Plan);
        if (!opened.IsGood)
        {
            return new(null, opened.Problems);
        }

        MapReader reader = opened.Value;
        BareRehearsal? bare = PlanHeadReader.Bare(reader);
        Plan plan = new()
        {
            Date = reader.Date("date"),
            Title = reader.Text("title", ""),
            Minutes = reader.Whole("minutes") ?? 15,
            Rolling = reader.Choice<bool>("advance") ?? true,
            Piano = PianoField.Read(reader),
            Off = PlanHeadReader.Off(reader),
            Bare = bare,
            Steps = bare is not null ? [] : [.. Steps(reader, new(context, reader.Problems))],
        };
        reader.Finish();
        return reader.Problems.Finish(plan);
    }

    public static string Write(Plan plan) => PlanWriter.Write(plan);

    private static IEnumerable<PlanStep> Steps(MapReader reader, PlanStepReader steps)
    {
        reader.Require("steps");
        return reader.Maps("steps").Select(steps.Read);
    }
}
