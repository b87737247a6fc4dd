using CsCheck;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Tests.Storage;

/// <summary>Whatever a file of ours may hold, as values.</summary>
internal static class AnyValue
{
    /// <summary>What a director may write anywhere, as the reader takes it: also what YAML could take for something else.</summary>
    internal static readonly Gen<string> Text = Gen.Char["abc éß♭:#-'\"\\,[]{}&*!|>%@`?~0 1true\u0001\t\u202E"].Array[1, 20]
        .Select(letters => WarmupConsole.Storage.Yaml.Printable.Line(new string(letters))).Where(text => text.Trim().Length > 0);

    internal static readonly Gen<string> OptionalText = Gen.OneOf<string>(Gen.Const(""), Text);

    internal static readonly Gen<string> Id = Gen.OneOf("true", "null", "five-note-scale", "8", "1-2", "no", "e5");

    internal static readonly Gen<DateOnly> Day = Gen.Int[0, 20_000].Select(day => DateOnly.FromDayNumber(730_000 + day));

    internal static readonly Gen<Pitch> Pitch =
        Gen.Select(Gen.Enum<Step>(), Gen.Int[-2, 2], Gen.Int[0, 8], (step, alteration, octave) => new Pitch(step, alteration, octave));

    internal static readonly Gen<VoiceRange> Range = Pitch.Array[4].Select(pitches => pitches.Order().ToArray())
        .Select(four => new VoiceRange(new(four[0], four[3]), new(four[1], four[2])));

    internal static readonly Gen<Choir> Choir =
        from name in Text
        from town in OptionalText
        from demo in Gen.Bool
        from rehearsal in Gen.Int[30, 300]
        from notes in Gen.OneOf(NoteNaming.All.ToArray())
        from parts in Part.Array[1, 16]
        from concerts in Gen.Select(Day, OptionalText, (day, title) => new Concert(day, title)).Array[0, 3]
        from words in Text.Array[0, 3]
        from praise in Gen.Bool
        select new Choir
        {
            Name = name,
            Town = town,
            Demo = demo,
            RehearsalMinutes = rehearsal,
            Notes = notes,
            Parts = [.. parts.Index().Select(part => part.Item with { Id = $"p{part.Index}", Letters = [$"l{part.Index}", $"k{part.Index}"] })],
            Concerts = concerts,
            OwnMarkKinds = [.. words.Index().Select(word => new MarkKind($"m{word.Index}", word.Item, [$"typed {word.Index}"], praise) { IsEffort = !praise && word.Index == 0 })],
        };

    internal static readonly Gen<Exercise> Exercise = Gen.OneOf<Exercise>(Sung, Counted);

    internal static readonly Gen<ChoirNeed> Need =
        from who in Gen.OneOf("everyone", "soprano", "women", "bass")
        from kind in Gen.Int[0, 2]
        from pitch in Pitch
        from range in Range
        from purpose in Gen.Enum<Purpose>()
        from piece in OptionalText
        from bars in OptionalText
        from until in Day
        from done in Day
        from dated in Gen.Int[0, 3]
        select new ChoirNeed
        {
            Who = who,
            Pitch = kind == 0 ? pitch : null,
            Region = kind == 1 ? range.Extreme : null,
            Purpose = kind == 2 ? purpose : null,
            Piece = piece,
            Bars = bars,
            Until = dated % 2 == 1 ? until : null,
            Done = dated > 1 ? done : null,
        };

    private static Gen<Part> Part =>
        from name in Text
        from groups in Gen.OneOf("women", "men", "true", "1-2").Array[0, 2]
        from singers in Gen.Int[0, 500]
        from placement in Gen.Int[-3, 3]
        from plain in Range
        from start in Gen.Bool
        from days in Day.HashSet[0, 3]
        from dated in Range.Array[3]
        from hasPlain in Gen.Bool
        let history = days.Order().Select((day, index) => new RangeEntry(day, dated[index], false))
            .Prepend(new(null, plain, start)).Skip(hasPlain || days.Count == 0 ? 0 : 1).ToArray()
        select new Part("", name, [], groups, singers, placement, history[^1].Range) { History = history };

    private static Gen<Tempo> Tempo => Gen.Int[20_000, 300_000].Select(WarmupConsole.Music.Rhythm.Tempo.FromMilliBeatsPerMinute);

    private static Gen<Exercise> Common =>
        from id in Id
        from title in Text
        from tempos in Tempo.Array[3].Select(three => three.Order().ToArray())
        from purposes in Gen.Enum<Purpose>().HashSet[0, 4]
        from words in OptionalText.Array[3]
        from talk in Gen.Int[0, 600]
        select new Exercise
        {
            Id = id,
            Title = title,
            Stage = Stage.Body,
            Tempo = new(tempos[1], tempos[0], tempos[2]),
            Purposes = [.. purposes],
            Instruction = words[0],
            Listen = words[1],
            Caution = words[2],
            TalkSeconds = talk,
        };

    private static Gen<Exercise> Sung =>
        from common in Common
        from stage in Gen.OneOf(Stage.Humming, Stage.LipTrill, Stage.Slide, Stage.Sung, Stage.Settling)
        from mode in Gen.Enum<Mode>()
        from pattern in Pattern
        from voice in Pattern
        from offset in Gen.Int[0, 960]
        from articulation in Gen.Enum<Articulation>()
        from dynamics in Gen.OneOf("pp", "p", "mp", "mf", "f", "ff").Array[1, 4]
        from numeral in Gen.OneOf("", "I", "ii", "V7", "viio7", "bVII")
        let line = new VoiceLine(["men", "alto"], voice, new(offset))
        select common with
        {
            Stage = stage,
            Mode = mode,
            Pattern = pattern,
            Voices = line.Placed.Length <= pattern.Length ? [line] : [],
            Articulation = articulation,
            Dynamics = dynamics,
            Harmony = numeral.Length == 0 || pattern.Length > Beats.FromBeats(BeatsText.MostBeats) ? [] : [new(numeral, pattern.Length)],
        };

    private static Gen<Exercise> Counted =>
        from common in Common
        from stage in Gen.OneOf(Stage.Body, Stage.Breathing)
        from phases in Gen.Select(Gen.Enum<BreathAction>(), Gen.Int[1, 60], OptionalText, (action, counts, say) => new BreathPhase(action, action == BreathAction.Hold ? Math.Min(4, counts) : counts, say)).Array[1, 5]
        from rounds in Gen.Int[1, 20]
        select common with { Stage = stage, Phases = phases, Rounds = rounds };

    /// <summary>A note first, then notes and rests; with no syllables at all, or with one on the first note.</summary>
    private static Gen<Pattern> Pattern =>
        from first in Note
        from others in Gen.OneOf<PatternNote>(Note, Rest).Array[0, 8]
        from isSpoken in Gen.Bool
        from text in Gen.OneOf("noo", "ma'", "8", "é")
        from vowel in Gen.OneOf("u", "", "aɪ")
        let notes = others.Select(note => isSpoken ? note : note with { Syllable = null })
        select new Pattern([first with { Syllable = isSpoken ? new(text, vowel) : null }, .. notes]);

    private static Gen<PatternNote> Note =>
        from number in Gen.Int[1, 7]
        from alteration in Gen.Int[-1, 1]
        from octave in Gen.Int[-1, 1]
        from ticks in Gen.Int[1, 4000]
        from text in Gen.OneOf("", "noo", "nah")
        select new PatternNote(new(number, alteration, octave), new(ticks), text.Length == 0 ? null : new(text, "ɑ"));

    private static Gen<PatternNote> Rest => Gen.Int[1, 4000].Select(ticks => new PatternNote(null, new(ticks), null));
}
