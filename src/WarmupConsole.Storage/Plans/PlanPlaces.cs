using System.Text;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Plans;

/// <summary>Where the steps of a plan and their fields stand in its file; kept beside the plan, which knows nothing of files.</summary>
public sealed class PlanPlaces
{
    private readonly YamlMap? top;
    private readonly IReadOnlyList<YamlMap> steps;

    private PlanPlaces(YamlMap? top)
    {
        this.top = top;
        steps = top?.Find("steps")?.Value is YamlList list ? [.. list.Items.OfType<YamlMap>()] : [];
    }

    /// <param name="yaml">The text of a plan that was read without problems; of any other text nothing but the beginning is known.</param>
    public static PlanPlaces Of(string yaml) => new(YamlTree.Read("", Encoding.UTF8.GetBytes(yaml)).Value?.Top);

    /// <summary>The place of a field where the file has it; else of the step's exercise, or of the steps; else the beginning.</summary>
    /// <param name="step">Index of the step, from 0, or null for the plan.</param>
    /// <param name="field">Name of the field, or empty.</param>
    public YamlPlace Find(int? step, string field)
    {
        YamlMap? map = step is { } index ? steps.ElementAtOrDefault(index) : top;
        YamlField? found = map?.Find(field) ?? map?.Find("exercise") ?? map?.Find("steps");
        return found?.Name.Place ?? map?.Place ?? YamlPlace.Top;
    }
}
