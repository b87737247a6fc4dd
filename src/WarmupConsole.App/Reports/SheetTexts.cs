using System.Globalization;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.TakeAlong;

namespace WarmupConsole.App.Reports;

/// <summary>What stands on the page for the music stand.</summary>
internal static class SheetTexts
{
    internal const string StepsCaption = "The steps in order";
    internal const string CuesTitle = "Cue chords";
    internal const string CuesAbout = "At the start of a step the tonic chord (I) and two beats of count-in; before each further key what the step says. Here: the dominant seventh (V7), then the tonic, each from its root upwards.";
    internal const string None = "none";
    internal const string NoKeyFits = "none fits: left out";

    private const string Everyone = "everyone";

    internal static IReadOnlyList<string> Columns { get; } = ["No.", "Exercise", "Beats a minute", "Keys", "Who sings", "Minutes"];

    internal static string Head(Warmup warmup, Part? part)
    {
        string length = string.Create(CultureInfo.InvariantCulture, $"{warmup.Steps.Count} steps, {ClockText.Of(warmup.Planned)} of {warmup.Plan.Minutes}:00 minutes.");
        return part is null
            ? $"{length} {(warmup.Plan.Rolling ? "It goes on by itself after each breath." : "It waits at every key.")}"
            : $"{length} Only keys within {part.Range.Comfortable.In(warmup.Choir.Notes)}, where this part sings with ease.";
    }

    /// <summary>Under the title: what is sung or done, and what the piano plays; for a singer alone how it is done and what to mind instead.</summary>
    internal static IEnumerable<string> Lines(Warmup warmup, WarmupStep step, Part? part)
    {
        Exercise exercise = step.Exercise;
        IEnumerable<string> sung = exercise.Pattern is not { } pattern ? [part is null ? TakeAlongTexts.Rounds(step) : TakeAlongTexts.Phases(step)]
            : part is not null ? [Line(exercise.PatternFor(part)!)]
            : [Line(pattern), .. exercise.Voices.Select(Voice)];
        return sung.Concat(part is not null ? new[] { exercise.Instruction, exercise.Caution }.Where(text => text.Length > 0) : exercise.IsSung ? [Piano(warmup.PianoOf(step))] : []);
    }

    /// <summary>"Whole chords with the melody; V7 and I before each key".</summary>
    internal static string Piano(PianoPart piano)
    {
        string style = piano.Style switch
        {
            AccompanimentStyle.CueOnly => "Sung alone",
            AccompanimentStyle.Melody => "Melody alone",
            AccompanimentStyle.Block => "Whole chords",
            AccompanimentStyle.Broken => "Broken chords",
            AccompanimentStyle.BassAndChord => "Bass and chord",
            _ => "Drone on the tonic and fifth",
        };
        string melody = piano is { PlaysMelody: true, Style: not AccompanimentStyle.Melody } ? " with the melody" : "";
        string between = piano.Between switch
        {
            BetweenKeys.Tonic => "I before each key",
            BetweenKeys.Dominant => "V7 and I before each key",
            _ => "the last I, then the new one, before each key",
        };
        string click = piano.Click switch
        {
            Click.CountIn => "; the count-in tapped",
            Click.EveryBeat => "; every beat tapped",
            _ => "",
        };
        return $"{style}{melody}; {between}{click}";
    }

    internal static string Keys(WarmupStep step, NoteNaming notes) => (step.Exercise.IsSung, step.Ladder.Rungs.Count) switch
    {
        (false, _) => None,
        (_, 0) => NoKeyFits,
        _ => TakeAlongTexts.Keys(step.Ladder.Rungs, notes),
    };

    /// <summary>"everyone", or who rests or takes another octave in which keys.</summary>
    internal static string WhoSings(WarmupStep step, NoteNaming notes)
    {
        IReadOnlyList<Rung> rungs = step.Ladder.Rungs;
        if (rungs.Count == 0)
        {
            return step.Exercise.IsSung ? "nobody" : Everyone;
        }

        string[] except = [.. rungs[0].Parts.SelectMany((part, index) => Exceptions(part.Part, [.. rungs.Select(rung => (rung, rung.Parts[index]))], notes))];
        return except.Length == 0 ? Everyone : $"{Everyone}, but {string.Join("; ", except)}";
    }

    /// <summary>The lowest and the highest note asked of the one part that sings.</summary>
    internal static string Span(WarmupStep step, NoteNaming notes)
    {
        RungPart[] sung = [.. step.Ladder.Rungs.SelectMany(rung => rung.Parts).Where(part => part.Sings)];
        return sung.Length == 0 ? (step.Exercise.IsSung ? "rest" : "you")
            : $"you, {new PitchRange(sung.Select(part => part.Span.Low).Min(), sung.Select(part => part.Span.High).Max()).In(notes)}";
    }

    internal static bool HasMajorThird(Rung rung) => ModeData.Semitones(rung.Mode, 3) == 4;

    /// <summary>"D♭ major", "C minor": as its tonic chord is called.</summary>
    internal static string Chord(Rung rung, NoteNaming notes) => notes.WriteName(rung.Tonic) + (HasMajorThird(rung) ? " major" : " minor");

    /// <summary>"A♭ C E♭ G♭, then D♭ F A♭".</summary>
    internal static string Cue(Rung rung, NoteNaming notes)
    {
        SpelledCue cue = SpelledCue.Of(rung);
        return $"{Names(cue.Dominant, notes)}, then {Names(cue.Tonic, notes)}";
    }

    private static string Names(IReadOnlyList<Pitch> chord, NoteNaming notes) => string.Join(' ', chord.Select(notes.WriteName));

    private static IEnumerable<string> Exceptions(Part part, (Rung Rung, RungPart Part)[] sung, NoteNaming notes)
    {
        (string Words, Func<RungPart, bool> IsSo)[] kinds =
        [
            ("rest in", now => !now.Sings),
            ("sing an octave lower in", now => now is { Sings: true, OctaveShift: < 0 }),
            ("sing an octave higher in", now => now is { Sings: true, OctaveShift: > 0 }),
        ];
        foreach ((string words, Func<RungPart, bool> isSo) in kinds)
        {
            string[] keys = [.. sung.Where(key => isSo(key.Part)).Select(key => notes.WriteName(key.Rung.Tonic)).Distinct()];
            if (keys.Length > 0)
            {
                yield return $"{PartPlural.Of(part)} {words} {string.Join(' ', keys)}";
            }
        }
    }

    private static string Voice(VoiceLine voice)
    {
        string later = voice.Offset.Ticks == 0 ? "" : $", {voice.Offset} beats later";
        return $"{string.Join(" and ", voice.Parts)}{later}: {Line(voice.Pattern)}";
    }

    /// <summary>Degrees and syllables: "1 2 3 2 1 on noo".</summary>
    private static string Line(Pattern pattern)
    {
        PatternNote[] sung = [.. pattern.Notes.Where(note => note.Degree is not null)];
        string degrees = string.Join(' ', sung.Select(note => note.Degree.ToString()!.Replace('b', '♭').Replace('#', '♯')));
        string words = string.Join(' ', sung.Select(note => note.Syllable?.Text).OfType<string>());
        return words.Length == 0 ? degrees : $"{degrees} on {words}";
    }
}
