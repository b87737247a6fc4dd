using System.Globalization;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Planning;

/// <summary>Every sentence that the check of a plan can say: what, why, what to do. "Common practice" marks a habit of the trade.</summary>
internal static class PlanTexts
{
    internal static string SingsBeforeBreath(int step, Exercise exercise) =>
        $"{Step(step, exercise)} sounds before any breathing exercise. By common practice breath comes before sound: put a breathing exercise in front of it.";

    internal static string SingsBeforeHalfClosed(int step, Exercise exercise) =>
        $"{Step(step, exercise)} is full singing before any half-closed sound. Voices wake more easily from humming or lip trills (common practice): put one of them in front of it.";

    internal static string OpensTooEarly(int step, Exercise exercise, string vowel) =>
        $"{Step(step, exercise)} makes the open vowel [{vowel}] the first one sung. By common practice closed vowels come first: begin with a closed one such as [u] or [i], or move the step further back.";

    internal static string BeyondExtreme(int step, Exercise exercise, Part part, Pitch tonic, Pitch note) =>
        $"{Step(step, exercise)} asks {note} of the {part.Name} in {tonic.Name}, beyond the extreme range {part.Range.Extreme}. Nobody in the part sings that: end the ladder earlier or let the part rest.";

    internal static string ExtremeTooEarly(int step, Exercise exercise, Part part, Pitch tonic, Pitch note) =>
        $"{Step(step, exercise)} takes the {part.Name} to {note} in {tonic.Name}, near the end of the extreme range {part.Range.Extreme}, before the last third of the warm-up. "
        + "Voices need time to get there (common practice): lower its reach, limit its keys, or move it towards the end.";

    internal static string NoKeys(int step, Exercise exercise, IEnumerable<string> reasons) =>
        $"{Step(step, exercise)} has no key to sing in. {string.Join(' ', reasons)} Limit it to one part or any part, or allow more reach.".Replace("  ", " ", StringComparison.Ordinal);

    internal static string TooLong(TimeSpan planned, int minutes) =>
        $"The steps take {Clock(planned)}, more than the {minutes} minutes of the plan. Leave a step out, ask for fewer keys, or give the plan more minutes.";

    internal static string TooShort(TimeSpan planned, int minutes) =>
        $"The steps take only {Clock(planned)} of the {minutes} minutes of the plan. Add a step or more keys, or give the plan fewer minutes.";

    internal static string ShortShare(int minutes, int usual, int rehearsal) =>
        $"{minutes} minutes is little for a rehearsal of {rehearsal}: by common practice a warm-up takes about an eighth of it and at least 10 minutes, here {usual}.";

    internal static string LongShare(int minutes, int usual, int rehearsal) =>
        $"{minutes} minutes is much for a rehearsal of {rehearsal}: by common practice a warm-up takes about an eighth of it, here {usual}. Up to 30 is fine for a reason.";

    internal static string OutOfOrder(int step, Exercise exercise, Exercise before) =>
        $"{Step(step, exercise)} ({StageData.Words(exercise.Stage)}) follows {before.Title} ({StageData.Words(before.Stage)}). The usual order of stages is a habit that singers lean on: move it forward unless you mean it.";

    /// <summary>"9:05" for nine minutes and five seconds.</summary>
    internal static string Clock(TimeSpan time) =>
        $"{(int)time.TotalMinutes}:{time.Seconds.ToString("00", CultureInfo.InvariantCulture)}";

    private static string Step(int step, Exercise exercise) => $"Step {step + 1} ({exercise.Title})";
}
