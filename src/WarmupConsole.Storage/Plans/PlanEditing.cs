using System.Text;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Plans;

/// <summary>
/// Writes an edited plan into the text it came from. Steps that did not change keep their lines and comments, wherever they moved; a changed
/// step is written anew under the comments above it. What cannot be kept is told.
/// </summary>
public static class PlanEditing
{
    /// <param name="yaml">The text that was read.</param>
    /// <param name="old">What it said.</param>
    /// <param name="plan">What it is to say; only its steps differ.</param>
    /// <param name="origins">For each new step the index it had, or null.</param>
    public static EditedPlan Write(string yaml, Plan old, Plan plan, IReadOnlyList<int?> origins)
    {
        ArgumentNullException.ThrowIfNull(yaml);
        ArgumentNullException.ThrowIfNull(old);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(origins);
        string text = Spliced(yaml, old, plan, origins) is { } spliced && Says(spliced, plan) ? spliced : PlanFile.Write(plan);
        return new(text, Lost(yaml, text));
    }

    /// <summary>Two plans that are written the same are the same.</summary>
    private static bool Says(string text, Plan plan) =>
        PlanFile.Read("", Encoding.UTF8.GetBytes(text)).Value is { } read && PlanFile.Write(read) == PlanFile.Write(plan);

    /// <summary>Null where the steps are no list with a line or more for each.</summary>
    private static string? Spliced(string yaml, Plan old, Plan plan, IReadOnlyList<int?> origins)
    {
        if (StepBlocks.Of(yaml) is not { } blocks || blocks.Steps.Count != old.Steps.Count)
        {
            return null;
        }

        StringBuilder text = new(blocks.Head);
        foreach ((PlanStep step, int? origin) in plan.Steps.Zip(origins))
        {
            text.Append(origin is { } index ? Kept(blocks.Steps[index], old.Steps[index], step) : PlanWriter.WriteStep(step));
        }

        return text.Append(blocks.Tail).ToString();
    }

    private static string Kept(StepBlock block, PlanStep old, PlanStep step) =>
        PlanWriter.WriteStep(old) == PlanWriter.WriteStep(step) ? block.Above + block.Lines : block.Above + PlanWriter.WriteStep(step);

    /// <summary>Each comment once for every time that it is missing.</summary>
    private static List<string> Lost(string before, string after)
    {
        List<string> left = [.. YamlComments.In(after)];
        return [.. YamlComments.In(before).Where(comment => !left.Remove(comment))];
    }
}
