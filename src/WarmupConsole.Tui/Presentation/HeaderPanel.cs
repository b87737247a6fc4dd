using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tui.Presentation;

/// <summary>The first row: which step, at what tempo, and the state in a word.</summary>
internal static class HeaderPanel
{
    private const string Gap = "   ";
    private const int LeastTitle = 8;

    /// <summary>What there is room for does not come and go with the word at the right.</summary>
    private static readonly int WidestState = ScreenTexts.States.Values.Concat(ScreenTexts.Holds.Values.Select(hold => $" {hold} ")).Max(CellText.Columns);

    internal static void Draw(Pane pane, ScreenModel model)
    {
        string state = StateWord(model.Session);
        pane.WriteFit(0, 0, Left(model, pane.Width - WidestState - 2), Ink.Strong);
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

    private static string Left(ScreenModel model, int columns) => model switch
    {
        { Session.State: LiveState.Ready or LiveState.Finished } or { Exercise: null } => CellText.Fit(Choir(model.Session), columns),
        { Exercise: { } exercise } => InStep(model.Session, exercise, columns),
    };

    /// <summary>Where there is no room for all, what the piano plays is left out; once the director has changed it, how it is sung is, and then the title is shortened.</summary>
    private static string InStep(LiveSession session, Exercise exercise, int columns)
    {
        (string place, string tempo, string touch, string piano) = (Place(session), Tempo(session), Touch(exercise), Piano(session, exercise));
        string whole = Joined(place, exercise.Title, tempo, touch, piano);
        if (CellText.Columns(whole) <= columns)
        {
            return whole;
        }

        int others = CellText.Columns(Joined(place, tempo, piano)) + Gap.Length;
        string title = session.Style is null ? exercise.Title : CellText.Fit(exercise.Title, Math.Max(LeastTitle, columns - others));
        return CellText.Fit(Joined(place, title, tempo, session.Style is null ? touch : piano), columns);
    }

    private static string Joined(params IEnumerable<string> pieces) => string.Join(Gap, pieces.Where(piece => piece.Length > 0));

    /// <summary>What the piano plays: "piano: broken chords"; nothing while it follows.</summary>
    private static string Piano(LiveSession session, Exercise exercise) =>
        exercise.IsSung && !session.Follows ? ScreenTexts.Of(ScreenTexts.PianoPlays, PianoData.Words(session.Piano.Style)) : "";

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
