using WarmupConsole.Music.Ladders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Plans;

/// <summary>The words and limits of plan files, for reading and for writing.</summary>
internal static class PlanWords
{
    internal static readonly Limits Minutes = new(5, 60, "minutes");
    internal static readonly Limits Steps = new(1, 60, "steps");
    internal static readonly Limits Off = new(0, 20, "rules");
    internal static readonly Limits Talk = new(0, 600, "seconds");
    internal static readonly Limits Tempo = new(Music.Rhythm.Tempo.SlowestBeatsPerMinute, Music.Rhythm.Tempo.FastestBeatsPerMinute, "bpm");
    internal static readonly Limits Rounds = new(1, 20, "rounds");
    internal static readonly Limits Breath = new(1, 8, "beats");
    internal static readonly Limits Because = new(0, 20, "reasons");
    internal static readonly Limits Answers = new(0, 20, "answers");
    internal static readonly Limits Value = new(0, 100_000, "points");
    internal static readonly Limits Reach = new(0, 100, "per cent");
    internal static readonly Limits Tolerance = new(0, 12, "semitones");
    internal static readonly Limits By = new(1, 12, "semitones");
    internal static readonly Limits Most = new(1, 24, "keys");

    internal static readonly Choices<bool> Advance = new(("rolling", true), ("waiting", false));

    internal static readonly Choices<LadderShape> Shapes = new(
        ("up-and-back", LadderShape.UpAndBack),
        ("up", LadderShape.Up),
        ("down", LadderShape.Down),
        ("down-and-back", LadderShape.DownAndBack),
        ("out-from-the-middle", LadderShape.OutFromTheMiddle));
}
