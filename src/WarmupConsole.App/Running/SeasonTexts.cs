namespace WarmupConsole.App.Running;

/// <summary>What a review says about logs, or pieces of them, that it could not use.</summary>
internal static class SeasonTexts
{
    internal const string Nothing = "Nothing was left out.";

    internal static string Older(int sessions, int weeks) =>
        $"{Count(sessions, "session")} older than {Count(weeks, "week")} before the newest one: not weighed (--weeks 0 takes all).";

    internal static string Unreadable(string name, string reason) => $"{name}: left out. {Sentence(reason)}";

    internal static string Damaged(string name, int places, string reason) => $"{name}: {Count(places, "place")} not read: {reason}.";

    internal static string Copy(string name, string other) => $"{name}: left out, because it is a copy of the same run as {other}.";

    internal static string UnknownExercises(string name, int rungs) =>
        $"{name}: the exercise of {Count(rungs, "key")} is not in the log; of these only the lowest and highest notes count.";

    internal static string ClockSetBack(string name) => $"{name}: the computer's clock was set back while it ran; its date may be wrong. Lengths were measured by another clock and hold.";

    internal static string UnknownPart(string part, int rungs) =>
        $"{part}: not a part of the choir now, {Count(rungs, "key")} in the logs not weighed. If it was renamed, give the part its old id again in choir.yaml.";

    internal static string Unattached(int marks) => $"{Count(marks, "mark")} made before anything was sung, or in a key that was not sung: not weighed.";

    internal static string Gone(IReadOnlyList<string> exercises) =>
        $"{Count(exercises.Count, "exercise")} led and not among the exercises now ({string.Join(", ", exercises)}): {(exercises.Count == 1 ? "it counts" : "they count")} for no purpose.";

    internal static string Dismissed(string id, string on, string why) => $"{id}: dismissed on {on}, {(why.Length == 0 ? "no reason given" : why)}. warmup review restore {id} shows it again.";

    private static string Sentence(string reason) => char.ToUpperInvariant(reason[0]) + reason[1..].TrimEnd('.') + ".";

    private static string Count(int number, string thing) => number == 1 ? $"1 {thing}" : $"{number} {thing}s";
}
