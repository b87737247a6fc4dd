using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Tests.Sessions.Planning;

/// <summary>A small catalogue: two or three exercises of every stage that the tests plan with.</summary>
internal static class SampleExercises
{
    internal static IReadOnlyDictionary<string, Exercise> All { get; } = new[]
    {
        Silent("shoulder-rolls", Stage.Body, BreathAction.Move),
        Silent("tall-spine", Stage.Body, BreathAction.Move),
        Silent("counted-breath", Stage.Breathing, BreathAction.Out),
        Silent("hissing-breath", Stage.Breathing, BreathAction.Out),
        Sung("hum-thirds", Stage.Humming, "1 2 3 2 1:2", "mm/m", Purpose.ScaleMotion, Purpose.Legato),
        Sung("hum-fifth", Stage.Humming, "5 4 3 2 1:2", "mm/m", Purpose.ScaleMotion),
        Sung("trill-fifth", Stage.LipTrill, "1 3 5 3 1:2", "br/ʙ", Purpose.LeapThird),
        Sung("trill-scale", Stage.LipTrill, "1 2 3 4 5 4 3 2 1:2", "br/ʙ", Purpose.ScaleMotion),
        Sung("slide-fifth", Stage.Slide, "1:2 5:2 1:2", "oo/u", Purpose.LeapFifth),
        Sung("five-note-scale", Stage.Sung, "1 2 3 4 5 4 3 2 1:2", "noo/u", Purpose.ScaleMotion, Purpose.Legato),
        Sung("falling-five", Stage.Sung, "5 4 3 2 1:2", "nee/i", Purpose.ScaleMotion, Purpose.Legato),
        Sung("thirds-climb", Stage.Sung, "1 3 2 4 3 5 4 2 1:2", "noh/o", Purpose.LeapThird, Purpose.ScaleMotion),
        Sung("arpeggio", Stage.Sung, "1 3 5 3 1:2", "nah/ɑ", Purpose.LeapThird, Purpose.LeapFifth),
        Sung("even-vowels", Stage.Sung, "1 1 1 1 1:2", "nee/i neh/e nah/ɑ noh/o noo/u", Purpose.EvenVowels, Purpose.RepeatedPitch),
        Sung("octave-arpeggio", Stage.Sung, "1 3 5 8 5 3 1:2", "yah/ɑ", Purpose.LeapOctave),
        Sung("two-octaves", Stage.Sung, "1, 8 1,:2", "nah/ɑ", Purpose.LeapOctave),
        Sung("repeated-tone", Stage.Sung, "1 1 2 1 1:2", "noo/u", Purpose.RepeatedPitch, Purpose.HalfSteps),
        Sung("sighing-hum", Stage.Settling, "3 2 1:3", "mm/m", Purpose.Slow),
        Sung("sinking-fifth", Stage.Settling, "5 3 1:3", "oo/u", Purpose.Slow),
    }.ToDictionary(exercise => exercise.Id);

    private static Exercise Silent(string id, Stage stage, BreathAction action) => new()
    {
        Id = id,
        Title = Title(id),
        Stage = stage,
        Tempo = Around(60),
        Phases = [new(BreathAction.In, 4, ""), new(action, 8, "")],
        Rounds = 4,
        Purposes = [Purpose.Sustained],
    };

    private static Exercise Sung(string id, Stage stage, string pattern, string syllables, params Purpose[] purposes) => new()
    {
        Id = id,
        Title = Title(id),
        Stage = stage,
        Pattern = SyllableText.Apply(PatternText.Parse(pattern).Value!, syllables).Value!,
        Tempo = Around(80),
        Purposes = purposes,
    };

    private static string Title(string id) => char.ToUpperInvariant(id[0]) + id[1..].Replace('-', ' ');

    private static TempoRange Around(int bpm) =>
        new(Tempo.FromBeatsPerMinute(bpm), Tempo.FromBeatsPerMinute(bpm - 10), Tempo.FromBeatsPerMinute(bpm + 10));
}
