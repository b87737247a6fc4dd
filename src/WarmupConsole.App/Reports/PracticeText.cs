using System.Globalization;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Findings.Practice;

namespace WarmupConsole.App.Reports;

/// <summary>Purposes covered and times learnt, in a director's words.</summary>
internal static class PracticeText
{
    private const int TitleColumns = 36;

    /// <summary>The purposes that most sessions went without come first; those of the last session share a line.</summary>
    internal static IEnumerable<string> Purposes(Practised practised, int sessions)
    {
        PurposePractice[] never = [.. practised.Purposes.Where(purpose => purpose.Last is null)];
        PurposePractice[] lately = [.. practised.Purposes.Where(purpose => purpose is { Last: not null, Since: 0 })];
        return sessions == 0 ? [] :
        [
            .. never.Length == 0 ? (string[])[] : [$"Never: {Words(never)}."],
            .. practised.Purposes.Where(purpose => purpose is { Last: not null, Since: > 0 }).GroupBy(purpose => purpose.Since)
                .Select(same => $"{(same.Key == 1 ? "1 session" : string.Create(CultureInfo.InvariantCulture, $"{same.Key} sessions"))} ago: {Words(same)}."),
            .. lately.Length == 0 ? (string[])[] : [$"In the last session: {Words(lately)}."],
        ];
    }

    internal static IEnumerable<string> Times(Practised practised) => practised.Exercises.Select(exercise => string.Create(
        CultureInfo.InvariantCulture, $"{exercise.Title.PadRight(TitleColumns)} {exercise.Times,3} times, usually {ClockText.Of(exercise.Spent)}, of it talk {ClockText.Of(exercise.Talk)}"));

    private static string Words(IEnumerable<PurposePractice> purposes) => string.Join(", ", purposes.Select(purpose => PurposeData.Words(purpose.Purpose)));
}
