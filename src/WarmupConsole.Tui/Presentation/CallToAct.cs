using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tui.Presentation;

/// <summary>What going on does next, where the session waits for the director.</summary>
internal static class CallToAct
{
    internal static string? Of(ScreenModel model) => model switch
    {
        { Session.State: LiveState.Ready } => ScreenTexts.SpaceStarts,
        { Session.State: LiveState.Wait, Shown: { } next } => ScreenTexts.Of(ScreenTexts.WaitsForYou, model.Notes.WriteName(next.Tonic)),
        { Session.State: LiveState.Introduce, Exercise: not null } => ToBegin(model),
        _ => null,
    };

    private static string ToBegin(ScreenModel model) =>
        model.HasNothingToLead ? ScreenTexts.SpacePassesOver : model.IsSung ? ScreenTexts.SpaceCues : ScreenTexts.SpaceBegins;
}
