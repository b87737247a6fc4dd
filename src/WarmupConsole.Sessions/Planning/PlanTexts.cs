using System.Globalization;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Planning.Rules;

namespace WarmupConsole.Sessions.Planning;

/// <summary>Every sentence that the check of a plan can say: what, why, what to do. "Common practice" marks a habit of the trade.</summary>
internal static class PlanTexts
{
    internal const string BareNotTold =
        "The singers are not told. Who knows of it can warm up at home, and nobody sings cold unawares (common practice): tell them, and write told: true.";

    internal const string SameAsLast =
        "All exercises are those of the last plan. The order is a habit, the exercises may change: exchange one or two (warmup plan next does).";

    internal static string SingsBeforeBreath(int step, Exercise exercise) =>
        $"{Step(step, exercise)} sounds before any breathing exercise. By common practice breath comes before sound: put a breathing exercise in front of it.";

    internal static string SingsBeforeHalfClosed(int step, Exercise exercise) =>
        $"{Step(step, exercise)} is full singing before any half-closed sound. Voices wake more easily from humming or lip trills (common practice): put one of them in front of it.";

    internal static string OpensTooEarly(int step, Exercise exercise, string vowel) =>
        $"{Step(step, exercise)} makes the open vowel [{vowel}] the first one sung. By common practice closed vowels come first: begin with a closed one such as [u] or [i], or move the step further back.";

    internal static string BeyondExtreme(SungAt at) =>
        $"{Step(at.Step, at.Exercise)} asks {at.Note} of the {at.Part.Name} in {at.Key}, beyond the extreme range {at.Extreme}. Nobody in the part sings that: end the ladder earlier or let the part rest.";

    internal static string ExtremeTooEarly(SungAt at) =>
        $"{Step(at.Step, at.Exercise)} takes the {at.Part.Name} to {at.Note} in {at.Key}, near the end of the extreme range {at.Extreme}, before the last third of the warm-up. "
        + "Voices need time to get there (common practice): lower its reach, limit its keys, or move it towards the end.";

    internal static string NoKeys(int step, Exercise exercise, IEnumerable<string> reasons) =>
        $"{Step(step, exercise)} has no key to sing in. {string.Join(' ', reasons)} Limit it to one part or any part, or allow more reach.".Replace("  ", " ", StringComparison.Ordinal);

    internal static string TooLong(TimeSpan planned, int minutes) =>
        $"The steps take {ClockText.Of(planned)}, more than the {minutes} minutes of the plan. Leave a step out, ask for fewer keys, or give the plan more minutes.";

    internal static string TooShort(TimeSpan planned, int minutes) =>
        $"The steps take only {ClockText.Of(planned)} of the {minutes} minutes of the plan. Add a step or more keys, or give the plan fewer minutes.";

    internal static string ShortShare(int minutes, int usual, int rehearsal) =>
        $"{minutes} minutes is little for a rehearsal of {rehearsal}: by common practice a warm-up takes about an eighth of it and at least 10 minutes, here {usual}.";

    internal static string LongShare(int minutes, int usual, int rehearsal) =>
        $"{minutes} minutes is much for a rehearsal of {rehearsal}: by common practice a warm-up takes about an eighth of it, here {usual}. Up to 30 is fine for a reason.";

    internal static string OutOfOrder(int step, Exercise exercise, Exercise before) =>
        $"{Step(step, exercise)} ({StageData.Words(exercise.Stage)}) follows {before.Title} ({StageData.Words(before.Stage)}). The usual order of stages is a habit that singers lean on: move it forward unless you mean it.";

    internal static string LittleOfRange(PartCoverage part, NoteNaming notes) => part.Reached is { } reached
        ? string.Create(CultureInfo.InvariantCulture, $"{Sentence(PartPlural.Of(part.Part))} sing {reached.In(notes)} and no more: {part.ComfortableSemitones} of the {part.Part.Range.Comfortable.Semitones + 1} semitones of their comfortable {part.Part.Range.Comfortable.In(notes)}. What is never sung is not warm: let a ladder reach further, or begin one lower.")
        : $"{Sentence(PartPlural.Of(part.Part))} sing in no key of this plan. Give them a ladder of their own, or limit another one to them.";

    internal static string PurposesLeftOut(IEnumerable<string> families) =>
        $"Nothing here is for {string.Join(", ", families)}. A plan serves most functions of the voice, others another week: exchange an exercise for one that serves them (warmup exercises find).";

    internal static string LongRest(int step, Exercise exercise, Part part, TimeSpan rest) =>
        $"From {LowerStep(step, exercise)} on {PartPlural.Of(part)} rest for {ClockText.Of(rest)} while others sing. Voices cool down: let them take the octave, give them more tolerance, or put something for everyone in between.";

    internal static string ManyAnnouncements(int step, Exercise exercise, IReadOnlyList<LadderAnnouncement> announcements) =>
        string.Create(CultureInfo.InvariantCulture, $"{Step(step, exercise)} has {announcements.Count} entries and exits to announce; the first: {announcements[0].Sentence} Few are better: change its tolerance, or limit it to one group.");

    internal static string ClosedVowelHigh(SungAt at, string vowel) =>
        $"{Step(at.Step, at.Exercise)} takes {PartPlural.Of(at.Part)} to {at.Note} on [{vowel}] in {at.Key}, above their comfortable {at.ComfortableTop}. High notes ask for a more open vowel (common practice): let them open it, or choose another exercise for these keys.";

    internal static string VoiceWithoutPart(int step, Exercise exercise, IEnumerable<string> parts) =>
        $"{Step(step, exercise)} has a line for {string.Join(", ", parts)}, and nobody in this choir is called so: the line is left out. Give parts that group in choir.yaml, or choose another exercise.";

    internal static string NothingSettles(int step, Exercise exercise) =>
        $"{Step(step, exercise)} goes above the comfortable range, and nothing settles the voices after it. By common practice they come back before the first piece: end with a settling exercise.";

    internal static string TalkLeftOut(IReadOnlyList<int> steps) =>
        $"No time for talk is planned in step{(steps.Count == 1 ? "" : "s")} {string.Join(", ", steps.Select(step => step + 1))}. Saying what comes takes about 15 seconds, for a new exercise 60: leave 'talk' out, or the minutes will not hold.";

    internal static string AgainstTrend(int step, Exercise exercise, string words) =>
        $"Up to {LowerStep(step, exercise)}, the peak, the sung steps go {words}. By common practice they go the other way: change their order if nothing speaks for this one.";

    internal static string SameForWeeks(int kept, int steps) =>
        string.Create(CultureInfo.InvariantCulture, $"{kept} of the {steps} exercises are in each of the last three plans. The order is a habit, the exercises may change: exchange some (warmup plan next does).");

    internal static string ManyNew(IReadOnlyList<string> titles) =>
        $"{titles.Count} exercises are in no earlier plan: {string.Join(", ", titles)}. By common practice at most one is new in a warm-up: keep the others for the next weeks, or plan 60 seconds of talk for each.";

    internal static string BareWithoutConcert(int weeks) =>
        $"No concert is near: a rehearsal without a warm-up is for the last {weeks} weeks before one (common practice). Add the concert to choir.yaml, or plan a warm-up.";

    internal static string BareTooOften(int times, int most) =>
        $"This would be rehearsal {times} without a warm-up before the next concert; by common practice {most} are enough. Plan a warm-up.";

    internal static string BareTooSoon(int days, int least) =>
        $"The last rehearsal without a warm-up was only {days} days ago; by common practice {least} lie between two. Move it, or plan a warm-up.";

    private static string LowerStep(int step, Exercise exercise) => $"step {step + 1} ({exercise.Title})";

    private static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static string Step(int step, Exercise exercise) => $"Step {step + 1} ({exercise.Title})";
}
