using System.Globalization;
using System.Text;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Storage.Plans;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Exercises;

/// <summary>Writes exercises so that they read back as themselves; the session log keeps them so.</summary>
internal static class ExerciseWriter
{
    internal static string Write(IEnumerable<Exercise> exercises)
    {
        StringBuilder text = new("format: 1\nexercises:\n");
        foreach (Exercise exercise in exercises)
        {
            Head(text, exercise);
            if (exercise.Pattern is { } pattern)
            {
                Sung(text, exercise, pattern);
            }
            else
            {
                Phases(text, exercise);
            }

            Words(text, exercise);
        }

        return text.ToString();
    }

    private static void Head(StringBuilder text, Exercise exercise)
    {
        (Tempo usual, Tempo from, Tempo to) = exercise.Tempo;
        text.Append("  - id: ").Append(YamlLine.Quote(exercise.Id)).Append('\n');
        Line(text, "title", YamlLine.Quote(exercise.Title));
        Line(text, "stage", StageData.Id(exercise.Stage));
        Line(text, "tempo", $"{{default: {TempoField.Write(usual)}, from: {TempoField.Write(from)}, to: {TempoField.Write(to)}{(exercise.LastTempo is { } last ? $", last: {TempoField.Write(last)}" : "")}}}");
        Line(text, "purposes", $"[{string.Join(", ", exercise.Purposes.Select(PurposeData.Id))}]");
        Line(text, "talk", exercise.TalkSeconds.ToString(CultureInfo.InvariantCulture));
    }

    private static void Sung(StringBuilder text, Exercise exercise, Pattern pattern)
    {
        Line(text, "mode", ModeData.Id(exercise.Mode));
        Line(text, "pattern", YamlLine.Quote(PatternText.Write(pattern)));
        Optional(text, "syllables", SyllableText.Write(pattern));
        Voices(text, exercise.Voices);
        Optional(text, "harmony", HarmonyText.Write(exercise.Harmony));
        if (PianoField.Write(exercise.Piano) is { } piano)
        {
            Line(text, PianoField.Name, piano);
        }

        Line(text, "dynamics", YamlLine.List(exercise.Dynamics));
        Line(text, "articulation", ExerciseWords.Articulations.Name(exercise.Articulation));
        text.Append(exercise.Keys is null ? "" : "    keys:\n").AppendJoin("", (exercise.Keys is null ? [] : KeysWriter.Lines(exercise.Keys)).Select(line => $"      {line}\n"));
    }

    private static void Voices(StringBuilder text, IReadOnlyList<VoiceLine> voices)
    {
        text.Append(voices.Count == 0 ? "" : "    voices:\n");
        foreach (VoiceLine voice in voices)
        {
            string syllables = SyllableText.Write(voice.Pattern);
            text.Append(CultureInfo.InvariantCulture, $"      - {{parts: {YamlLine.List(voice.Parts)}, pattern: {YamlLine.Quote(PatternText.Write(voice.Pattern))}");
            text.Append(syllables.Length == 0 ? "" : $", syllables: {YamlLine.Quote(syllables)}");
            text.Append(voice.Offset == Beats.Zero ? "" : $", offset: {BeatsText.Write(voice.Offset)}").Append("}\n");
        }
    }

    private static void Phases(StringBuilder text, Exercise exercise)
    {
        text.Append("    phases:\n");
        foreach (BreathPhase phase in exercise.Phases)
        {
            string say = phase.Say.Length == 0 ? "" : $", say: {YamlLine.Quote(phase.Say)}";
            text.Append(CultureInfo.InvariantCulture, $"      - {{do: {ExerciseWords.Actions.Name(phase.Action)}, counts: {phase.Counts}{say}}}\n");
        }

        Line(text, "rounds", exercise.Rounds.ToString(CultureInfo.InvariantCulture));
    }

    private static void Words(StringBuilder text, Exercise exercise)
    {
        Optional(text, "instruction", exercise.Instruction);
        Optional(text, "listen", exercise.Listen);
        Optional(text, "caution", exercise.Caution);
    }

    private static void Optional(StringBuilder text, string name, string value)
    {
        if (value.Length > 0)
        {
            Line(text, name, YamlLine.Quote(value));
        }
    }

    private static void Line(StringBuilder text, string name, string value) =>
        text.Append("    ").Append(name).Append(": ").Append(value).Append('\n');
}
