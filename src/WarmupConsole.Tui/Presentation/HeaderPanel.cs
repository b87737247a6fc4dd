using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tui.Presentation;

/// <summary>The first row: which step, at what tempo, and the state in a word.</summary>
internal static class HeaderPanel
{
    internal static void Draw(Pane pane, ScreenModel model)
    {
        string state = StateWord(model.Session);
        pane.WriteFit(0, 0, CellText.Fit(Left(model), pane.Width - CellText.Columns(state) - 2), Ink.Strong);
        pane.WriteRight(0, state, HoldWord(model.Session).Length == 0 ? Ink.Live : Ink.Alert);
    }

    internal static string StateWord(LiveSession session)
    {
        string hold = HoldWord(session);
        return hold.Length > 0 ? $" {hold} " : ScreenTexts.States[session.State];
    }

    /// <summary>In large letters; empty when nothing is held.</summary>
    internal static string HoldWord(LiveSession session) =>
        session.Sounded is { UntilReleased: true } ? ScreenTexts.HeldWord : ScreenTexts.Holds[session.Hold];

    private static string Left(ScreenModel model) => model switch
    {
        { Session.State: LiveState.Ready or LiveState.Finished } or { Exercise: null } => Choir(model.Session),
        { Exercise: { } exercise } => string.Join("   ", Place(model.Session), exercise.Title, Tempo(model.Session), Touch(exercise)).TrimEnd(),
    };

    private static string Place(LiveSession session) => ScreenTexts.Of("{0}/{1}", session.Place + 1, session.Order.Count);

    private static string Tempo(LiveSession session) =>
        ScreenTexts.Of("♩={0:0.#}{1} {2}", session.Tempo.BeatsPerMinute, TempoToCome(session), session.Follows ? ScreenTexts.Following : session.Rolling ? ScreenTexts.Rolling : ScreenTexts.Waiting);

    /// <summary>Where a tempo that changes from key to key will be at the last one, as it is now.</summary>
    private static string TempoToCome(LiveSession session) => session.Step is { } step
        && step.Tempos.Moved(session.Tempo, session.TempoKey, session.Rungs.Count - 1) is var last && last != session.Tempo
        ? ScreenTexts.Of(ScreenTexts.TempoToCome, last.BeatsPerMinute)
        : "";

    /// <summary>How it is sung: "legato p mf p".</summary>
    private static string Touch(Exercise exercise) =>
        exercise.IsSung ? $"{MusicWords.Lower(exercise.Articulation)} {string.Join(' ', exercise.Dynamics)}" : "";

    private static string Choir(LiveSession session)
    {
        string town = session.Warmup.Choir.Town;
        return town.Length > 0 ? $"{session.Warmup.Choir.Name}, {town}" : session.Warmup.Choir.Name;
    }
}
