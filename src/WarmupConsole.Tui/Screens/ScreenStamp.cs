using System.Drawing;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tui.Screens;

/// <summary>All that makes one screenful differ from the next: time counts only as the beat and the seconds shown.</summary>
internal sealed record ScreenStamp(
    LiveSession Session,
    ConsoleStatus Status,
    MarkLine Line,
    PromptLine? Prompt,
    Notice? Notice,
    bool HelpOpen,
    int? Tour,
    BeatCount? Beat,
    (string Step, string Whole, long Second) Clocks,
    Size Size)
{
    internal static ScreenStamp Of(ScreenModel model, Size size) => new(
        model.Session,
        model.Status,
        model.Line,
        model.Prompt,
        model.Notice,
        model.HelpOpen,
        model.Tour,
        model.Beat,
        (ScreenTexts.Clock(model.Session.Clocks.StepAt(model.Now)), ScreenTexts.Clock(model.Session.Clocks.WholeAt(model.Now)), model.Now.Nanoseconds / 1_000_000_000),
        size);
}
