using System.Globalization;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Findings.Practice;

namespace WarmupConsole.Tui.Presentation.Reviewing;

/// <summary>Purposes covered, and how long each exercise usually takes.</summary>
internal static class PracticeLines
{
    private const int WordColumns = 30;
    private const int TitleColumns = 36;

    internal static ReviewPage Purposes(ReviewModel model, int columns) =>
        new([new(CellText.Fit(ReviewTexts.PurposesHead, columns), Ink.Strong)], [.. model.Practised.Purposes.Select(purpose => new ReviewLine(Purpose(purpose), purpose.Last is null ? Ink.Strong : Ink.Plain))]);

    internal static ReviewPage Times(ReviewModel model, int columns) => new(
        [.. ReviewLine.Wrapped(ReviewTexts.TimesNote, columns, Ink.Faint), new(CellText.Fit(ReviewTexts.TimesHead, columns), Ink.Strong)],
        [.. model.Practised.Exercises.Select(exercise => new ReviewLine(Exercise(exercise)))]);

    private static string Purpose(PurposePractice purpose) => string.Create(
        CultureInfo.InvariantCulture, $"{PurposeData.Words(purpose.Purpose).PadRight(WordColumns)}  {purpose.Steps,5}  {purpose.Sessions,8}  {Last(purpose)}");

    private static string Last(PurposePractice purpose) => purpose switch
    {
        { Last: null } => ReviewTexts.Never,
        { Since: 0 } => ReviewTexts.ThisTime,
        _ => ReviewTexts.Ago(purpose.Since),
    };

    private static string Exercise(ExercisePractice exercise)
    {
        string title = CellText.Fit(exercise.Title, TitleColumns);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{title}{new string(' ', TitleColumns - CellText.Columns(title))}  {exercise.Times,5}  {ScreenTexts.Clock(exercise.Talk),5}  {ScreenTexts.Clock(exercise.Spent),6}  {exercise.Last:d MMM yyyy}");
    }
}
