using System.Globalization;
using System.Text;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Plans;

/// <summary>Writes a plan as a director would: what is as usual is left out.</summary>
internal static class PlanWriter
{
    internal static string Write(Plan plan)
    {
        StringBuilder text = new("format: 1\n");
        Line(text, "", "date", plan.Date is { } day ? DayText.Write(day) : null);
        Line(text, "", "title", plan.Title.Length == 0 ? null : YamlLine.Quote(plan.Title));
        Line(text, "", "minutes", Number(plan.Minutes));
        Line(text, "", "advance", PlanWords.Advance.Name(plan.Rolling));
        Line(text, "", PianoField.Name, PianoField.Write(plan.Piano));
        Off(text, plan.Off);
        if (plan.Bare is { } bare)
        {
            Line(text, "", "bare", $"{{told: {(bare.Told ? "true" : "false")}, because: {YamlLine.Quote(bare.Because)}}}");
            return text.ToString();
        }

        text.Append("steps:\n");
        foreach (PlanStep step in plan.Steps)
        {
            Step(text, step);
        }

        return text.ToString();
    }

    /// <summary>One step with its lines, as <see cref="Write"/> has it.</summary>
    internal static string WriteStep(PlanStep step)
    {
        StringBuilder text = new();
        Step(text, step);
        return text.ToString();
    }

    private static void Off(StringBuilder text, IReadOnlyList<RuleOff> rules)
    {
        if (rules.Count > 0)
        {
            text.Append("off:\n");
        }

        foreach (RuleOff off in rules)
        {
            text.Append("  - {rule: ").Append(off.Rule).Append(", because: ").Append(YamlLine.Quote(off.Because)).Append("}\n");
        }
    }

    private static void Step(StringBuilder text, PlanStep step)
    {
        Line(text, "  - ", "exercise", YamlLine.Quote(step.ExerciseId));
        Line(text, "    ", "talk", Number(step.TalkSeconds));
        Line(text, "    ", "tempo", Tempos(step));
        Line(text, "    ", "rounds", Number(step.Rounds));
        Line(text, "    ", "breath", step.BreathBeats == 2 ? null : Number(step.BreathBeats));
        Line(text, "    ", PianoField.Name, PianoField.Write(step.Piano));
        if (step.Keys != KeysWriter.Usual)
        {
            text.Append("    keys:\n");
            text.AppendJoin("", KeysWriter.Lines(step.Keys).Select(line => $"      {line}\n"));
        }

        Line(text, "    ", "answers", step.Answers.Count == 0 ? null : YamlLine.List(step.Answers));
        Line(text, "    ", "value", Number(step.Value));
        Line(text, "    ", "because", step.Because.Count == 0 ? null : YamlLine.List(step.Because));
    }

    private static string? Tempos(PlanStep step) => (step.Tempo, step.LastTempo) switch
    {
        ({ } first, { } last) => $"{{from: {TempoField.Write(first)}, to: {TempoField.Write(last)}}}",
        (null, { } last) => $"{{to: {TempoField.Write(last)}}}",
        ({ } same, null) => TempoField.Write(same),
        _ => null,
    };

    private static void Line(StringBuilder text, string indent, string name, string? value)
    {
        if (value is not null)
        {
            text.Append(indent).Append(name).Append(": ").Append(value).Append('\n');
        }
    }

    private static string? Number(int? number) => number?.ToString(CultureInfo.InvariantCulture);
}
