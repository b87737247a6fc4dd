using System.Globalization;
using WarmupConsole.Midi.Playing;
using WarmupConsole.Sessions.Planning.Seasons;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App;

/// <summary>What the commands say outside the screen.</summary>
internal static class AppTexts
{
    internal const string About = """
        Plan a choir's warm-up, lead it live with every key on the piano, mark what you hear, and get next week's plan from it.

        warmup run PLAN        lead it            warmup review      what the last one showed
        warmup check PLAN      is it in order?    warmup plan next   the plan that answers it
        warmup ports --test    is the piano heard?
        """;

    internal const string RunAbout = "Lead a warm-up. Space starts and goes on, Tab silences at once, letters write a mark.";
    internal const string PlanAbout = "The plan's file or its day (2027-02-16), or a choir's folder. Without it: the newest plan of the choir folder you are in, or a built-in quarter of an hour.";
    internal const string TestIsHeard = "--test plays and is heard; leave --json out.";
    internal const string PortAbout = "Play on the first MIDI port whose name contains NAME; 'none' plays nowhere, 'built-in' on this machine's loudspeaker ('built-in tone' without FluidSynth). Default: the one in your settings, else the first instrument found, else built-in.";
    internal const string RecordAbout = "Keep what is played as a Standard MIDI File (a new file).";
    internal const string TraceAbout = "Keep every message with the time it was sent, a line each (a new file), and say at the end how punctual the notes were; for measuring.";
    internal const string OpenAbout = "Run without any plan: clocks and marks only.";
    internal const string ResumeAbout = "Go on with a run that was cut off, without asking.";
    internal const string AnewAbout = "Start anew although a run was cut off, without asking.";
    internal const string ChoirAbout = "The choir's folder (the one with choir.yaml). Default: the folder you are in.";
    internal const string JsonAbout = "Print JSON for other programs.";
    internal const string PortsAbout = "List the MIDI ports and inputs, and say what would be played on and listened to.";
    internal const string TestAbout = "Play a quiet scale and a chord, to hear whether it is the right instrument.";
    internal const string UseAbout = "Remember NAME for every warm-up on this machine; 'none' for silence, '' to forget it.";
    internal const string PortFromOption = "chosen with --port";
    internal const string InputOfPort = "it has the name of the port";
    internal const string ReviewAbout = "What the last warm-up showed: three sentences, then its steps, its marks, and the pitches that were marked; and what the logs of the last weeks show.";
    internal const string AllPitchesAbout = "List every pitch that was sung, not only those with marks.";
    internal const string HtmlAbout = "Write the review as one page with charts (a new file), for the browser or for paper.";
    internal const string CsvAbout = "Print every count (part, kind, pitch, vowel, loudness, length, place, minute) as comma-separated values.";
    internal const string ReviewScreenAbout = "Show the review on the whole screen: last session, findings, heat map, trends, ranges, purposes, times.";
    internal const string WeeksAbout = "How many weeks back from the newest session count; 0 takes all. Default: 26.";
    internal const string DismissAbout = "Do not tell a finding any more; it is kept with your reason in decisions.jsonl.";
    internal const string RestoreAbout = "Tell a dismissed finding again.";
    internal const string FindingAbout = "The finding's id, as the review shows it in brackets.";
    internal const string WhyAbout = "The reason, for later.";
    internal const string AcceptAbout = "Accept what the review proposes for a part: a new line in ranges.jsonl, from today on.";
    internal const string AcceptPartAbout = "The part's id.";
    internal const string BadWeeks = "weeks go from 0 (all) to 5000";
    internal const string SessionAbout = "A session log. Default: the newest one of the choir.";
    internal const string PlanGroupAbout = "Plans from what was heard.";
    internal const string NextAbout = "Write the next plan: what the last weeks show, what was asked for, variety, the way to the concert and the minutes, weighed against each other; every step says why.";
    internal const string ExplainAbout = "What each step of a plan is worth, and the best alternative that lost.";
    internal const string MinutesAbout = "How long the warm-up may take, 10-30. Default: as the last plan.";
    internal const string RehearsalAbout = "Minutes of the whole rehearsal, 30-300: the warm-up gets an eighth of it.";
    internal const string FocusAbout = "What counts most tonight: a finding (alto-flat-b4), a part or group, a purpose (tuning.third) or its family (tuning).";
    internal const string TonightAbout = "How the choir is tonight, as on the start screen: \"t 2, b 3 colds, tired\".";
    internal const string VariantAbout = "1 for the best plan, 2-9 for others that are unlike it.";
    internal const string SeasonAbout = "The calendar: warm-ups led and planned, concerts, how far and how difficult each may be, and which rehearsal could go without a warm-up.";
    internal const string DateAbout = "The day of the plan, as 2027-02-23, later than the last plan. Default: the same weekday, a week after it or, when that is past, the next.";
    internal const string CheckAbout = "Check a plan: order, vowels, ranges, keys, length, variety; each remark with its place in the file. Exit code 1 when there are errors.";
    internal const string KeysAbout = "Every key of a plan: who sings, who rests, and how long it takes.";
    internal const string PlayerAbout = "The piano's own process; the console starts it.";

    internal const string HearingCaution = "Quiet now: turn the volume of headphones or loudspeakers down first, then up slowly while it plays.";
    internal const string NoTerminal = "This command needs a terminal: open one and run it there.";
    internal const string NoSessions = "There is no session log yet: lead a warm-up first (warmup run PLAN).";
    internal const string NoSuchPlan = "There is no such plan, neither at this path nor of this name among the choir's plans; check both, or name the choir with --choir.";
    internal const string NotInChoirFolder = "A plan stands in the plans folder of a choir folder, beside choir.yaml; this one does not. Name the choir's folder with --choir FOLDER.";
    internal const string NoStart = "This session log does not say what was run: its first record is missing or cannot be read. Choose another log.";
    internal const string OpenTitle = "Without a plan";
    internal const string NoLogFile = "no session log";
    internal const string NothingToResume = "No run of this plan was cut off in the last six hours: this one begins anew.";
    internal const string ResumeOrAnew = "--resume goes on with a run, --anew begins one: choose one of them.";
    internal const string Slept = "The computer was asleep. Nothing was lost; go on leads in to the same key again.";
    internal const string NothingSounds = "nothing sounds yet";

    internal static string AndRecording(string sentence, string path) => $"{sentence} Recording to {path}.";

    internal static string SettingsAt(string path) => $"Settings of this machine (port, input, a4, pedals): {path}";

    internal static string InputFromSettings(string path) => $"input: in {path}";

    internal static string PortFromSettings(string path) => $"remembered in {path}; --use '' forgets it";

    internal static string Punctual(OnsetFigures onsets) => string.Create(
        CultureInfo.InvariantCulture,
        $"{onsets.Played} notes played, {onsets.Dropped} left out; late by {Milliseconds(onsets.MedianNanoseconds)} ms (median), {Milliseconds(onsets.Percentile99Nanoseconds)} ms (99 %), {Milliseconds(onsets.WorstNanoseconds)} ms (worst).");

    internal static string NoSuchOption(string word) => $"'{word}' is no option of this command. Ask it with --help what it takes.";

    internal static string BadDate(string text) => $"'{text}' is no date: write year-month-day, such as 2027-02-23.";

    internal static string CutOff(int step, string exercise, string key) =>
        $"This warm-up was cut off at step {step}, {exercise}{key}. Go on there? Enter goes on, n starts anew: ";

    internal static string NotResumed(string sentence) => $"A new run: the last one cannot be gone on with, for {sentence}.";

    internal static string Unsaved(string path) => $"The session log is not saved. Enter saves it to {path}; or type another file name; n drops it: ";

    internal static string SavedTo(string path) => $"Session log: {path}";

    internal const string EarAbout = "Listens to a MIDI input for the console. It is started by the console itself.";
    internal const string HearsNothing = "Nothing is heard: no port was wanted. Write input: NAME in settings.yaml.";
    internal const string PedalsForgotten = "No pedal and no key of the piano does anything any more.";
    internal const string NothingLearnt = "Nothing was learnt.";
    internal const string SettingsFaulty = "the settings have a fault and are left as they are; warmup ports tells which";

    internal static string PedalWanted(string use) => $"Press the pedal or the key of the piano that is to mean '{use}', and let it go. Ctrl+L asks again.";

    internal static string PedalLearnt(string control, string use) => $"Learnt: {control} means '{use}' on this machine.";

    internal static string PedalsAre(string pedals) => $"Pedals: {pedals}.";

    internal static string NotSaved(string path, string reason) => $"{path}: {reason}";

    internal static string LeftOut(string path, long offset, string sentence) => $"{path}, byte {offset}: left out: {sentence}";

    internal static string Internal(string message) => $"The program failed: {message}. Nothing already written to the session log is lost.";

    internal const string StillRunning = "A console leads this session just now. End it there first (Ctrl+E), then its marks are complete.";
    internal const string NothingToExplain = "This plan has no steps: there is nothing to explain.";
    internal const string NoAlternative = "no other exercise fits in its place";

    internal static string Explanation(long value, string season, int minutes, long best) =>
        $"{value} points ({season}); the best plan of {minutes} minutes that would be proposed now has {best}.\nA step is worth what the plan would lose without it, whatever the others are. docs/planner.md tells where the points come from.";

    internal static string Alternative(string other, long loss) => $"instead, best: {other} ({loss} less)";

    internal static string EqualAlternative(string other) => $"instead, as good: {other}";

    internal static string BetterAlternative(string other, long gain) => $"instead, better: {other} ({gain} more)";

    internal static string PastDay(DateOnly date) => $"{DayText.Write(date)} is past.";

    internal static string OutOfRange(string option, string text, int least, int most) => $"{option} is '{text}': write a whole number from {least} to {most}";

    internal static string UnknownFocus(string text, IReadOnlyList<string> names) => $"'{text}' is no finding, part, group or purpose here: write one of {string.Join(", ", names)}";

    internal static string UnknownTonight(string text) => $"'{text}' is not understood: say who, how many and what ails them, such as \"t 2, b 3 colds, tired\"; at least one part must be there";

    internal const string Unmet = "\nTo think about:";

    internal static string TooEarly(DateOnly date, DateOnly last) =>
        $"{DayText.Write(date)} is not after the last plan, which is of {DayText.Write(last)}: write a day from {DayText.Write(last.AddDays(1))} on";

    internal const string TodayLine = "today";
    internal const string SeasonLegend = "reach: how far the summit may go beyond what is easy. difficulty: of 100, for most exercises. Both grow in the twelve weeks before a concert and ease in its week.";

    internal static string SeasonWithout(string problem) => $"Left out of the calendar: {problem}";

    /// <summary>The caution that goes with every proposal to leave a warm-up out (docs/cautions.md).</summary>
    internal static IReadOnlyList<string> BareCard { get; } =
    [
        "A rehearsal without a warm-up is a choice, never the rule: once or twice before a concert, weeks apart, to know how cold voices feel (common practice).",
        "Tell the singers beforehand so that they can warm up at home, begin with an easy piece, and stop where it hurts. After a cold or a long day plan a warm-up.",
        "To choose it, write plans/DATE.yaml with: bare: {told: true, because: ...}. Nothing is planned bare by itself.",
        "",
    ];

    internal static string PlanThere(DateOnly? last) =>
        $"there is already a plan for that day, and nothing is overwritten: write another day with --date{(last is { } day ? $", from {DayText.Write(day.AddDays(1))} on" : "")}, or move that plan away";

    internal static string Proposal(DateOnly date, DateOnly? last, SeasonTarget season) =>
        $"Plan for {DayText.Write(date)}, {Printable.Line(SeasonTexts.Where(season))}{(last is { } day ? $", against {DayText.Write(day)}" : "")} (= kept, ~ changed, + new, - left out):";

    internal static string ExerciseWritten(string path, string id) => $"\nWritten to {path}\nLook at it: warmup exercises show {id}";

    internal static string PlanWritten(string path) => $"\nWritten to {path}\nLook at it: warmup check \"{path}\"";

    internal const string NewAbout = "Make the folder of a new choir: parts with ranges to start from, a first plan, an example of an exercise.";
    internal const string NewFolderAbout = "The folder to make; it must be empty or not there yet.";
    internal const string VoicesAbout = "Who sings: satb, sab, ssaa, ttbb, children (in unison), or changing voices.";
    internal const string RangesAbout = "The ranges of the choir's parts, since when they hold, and which are only a start.";
    internal const string RangesCheckAbout = "Find a part's range: the piano goes up and down by half-steps, you say what was easy and which was the last one.";
    internal const string PartAbout = "Only this part, by its id or letter. Default: one part after another.";
    internal const string StartRange = "a start from a published table, not yet their own: warmup ranges check";
    internal const string UndatedRange = "as choir.yaml says";

    internal const string RangeCaution = """
        Nobody's voice is pushed here. Warm up first; sing softly on an easy vowel; stop at the first strain, pain or hoarseness, and call a
        note the last one rather too early than too late. Whoever has a cold sits this out.
        """;

    internal const string RangeKeys = "Enter still good, l this was the last one, n not this one, a again, b back, s skip this part, q end";
    internal const string RangeNoPiano = "If you hear no piano, give the notes yourself.";
    internal const string RangeDropped = "Left as it was.";
    internal const string EasyUp = "upwards, with ease";
    internal const string UtmostUp = "upwards, at all";
    internal const string EasyDown = "downwards, with ease";
    internal const string UtmostDown = "downwards, at all";

    internal static string NewWritten(string folder, string plan) => $"""
        {folder} is ready. In choir.yaml write the choir's name and adjust the parts; the ranges are a start until you know your own.
          warmup check "{plan}"
          warmup ranges check --choir "{folder}"
          warmup run "{plan}"
        """;

    internal static string NoSuchFinding(string id, IEnumerable<string> ids) => string.Join(", ", ids) is { Length: > 0 } known
        ? $"There is no finding '{id}' now. There are: {known}."
        : $"There is no finding '{id}': nothing stands out at present (warmup review).";

    internal static string NotDismissed(string id) => $"'{id}' is not dismissed.";

    internal static string Dismissed(string id) => $"{id} is not told any more. warmup review restore {id} takes that back.";

    internal static string Restored(string id) => $"{id} is told again when the logs show it.";

    internal static string NoAdvice(string part) => $"The logs do not support a change of the range of {part} (warmup review); warmup ranges check --part {part} measures it.";

    internal static string PageWritten(string path) => $"Written: {path}";

    internal static string Accepted(string change, string day) => $"From {day} on: {change}.";

    internal static string Since(string day) => $"since {day}";

    internal static string TestAgain(string parts) =>
        $"{parts}: changing voices are tested anew every six to eight weeks (Cooksey, 1977, as quoted in teaching texts).";

    internal static string NoSuchPart(string text, IEnumerable<string> ids) => $"There is no part '{text}' in this choir; write one of {string.Join(", ", ids)}.";

    internal static string RangePart(string part, string range) => $"{part}, until now {range}. Enter begins, s skips this part, q ends: ";

    internal static string RangeNote(string stage, string note) => $"  {stage}: {note}  ";

    internal static string RangeResult(string part, string range) => $"{part}: {range}";

    internal static string RangeKeep(string day) => $"Keep this from {day} on? y keeps it, Enter leaves the part as it was: ";

    internal static string BothRanges(string extreme, string comfortable) => $"{extreme} at all, {comfortable} with ease";

    internal static string RuleIsOff(string rule, string because, int remarks) =>
        $"off ({rule}): {because} ({remarks switch { 0 => "it would find nothing", 1 => "it would say one thing", _ => $"it would say {remarks} things" }})";

    internal static string EarlierUnread(string problem) => $"An earlier plan is left out of the comparison: {problem}";

    internal const string ExerciseAbout = "One exercise instead of a plan, by its id (warmup exercises list).";
    internal const string StartAbout = "First tonic, such as C4 or Bb3. Default: middle C, or the nearest key that fits.";
    internal const string ShapeAbout = "up-and-back, up, down, down-and-back or out-from-the-middle.";
    internal const string LimitAbout = "For whom every key must fit: everyone, any, a part, or a group.";
    internal const string ReachAbout = "Per cent beyond comfortable towards extreme, 0 to 100.";
    internal const string ToleranceAbout = "Semitones a part may go beyond before it rests, 0 to 12.";
    internal const string ByAbout = "Semitones from key to key, 1 to 12.";
    internal const string MostAbout = "Most keys to the turning point, 1 to 24.";
    internal const string OctaveAbout = "A part that would rest takes the octave, where it can sing that.";
    internal const string PlanOrExercise = "Name a plan or an exercise, not both.";
    internal const string KeysOfExercise = "Options about keys go with --exercise ID; in a plan they stand in its file.";
    internal const string BoardLegend = "Left: ░ can sing, ▒ comfortable. Right: █ sung in these keys. * an octave away from its own.";

    internal const string ExercisesAbout = "The exercises: the catalogue and the choir's own.";
    internal const string ExercisesListAbout = "List them, a line each.";
    internal const string ExercisesFindAbout = "List those that hold all the words in id, title, purposes, instruction or what to listen for.";
    internal const string ExercisesShowAbout = "Everything about one exercise, with what it asks of the voice.";
    internal const string ExerciseIdAbout = "The exercise's id.";
    internal const string WordsAbout = "Words to look for.";
    internal const string StageAbout = "Only of this stage: body, breathing, humming, lip-trill, slide, sung or settling.";
    internal const string PurposeAbout = "Only for this purpose, such as tuning.third, or a whole family, such as tuning.";
    internal const string NoExercises = "No exercise is like that. Ask for fewer words, or list all (warmup exercises list).";

    internal static string NoSuchExercise(string id, IReadOnlyList<string> near) => near.Count == 0
        ? $"There is no exercise '{id}'. List them with: warmup exercises list"
        : $"There is no exercise '{id}'. Did you mean {string.Join(" or ", near)}?";

    internal static string NotOneOf(string name, string value, IEnumerable<string> allowed) =>
        $"'{value}' is no {name}: write one of {string.Join(", ", allowed)}.";

    internal const string ExercisesAddAbout = "Add an exercise of your own: a line of degrees, or what you play on the piano. It asks for the rest.";
    internal const string AddYesAbout = "Ask nothing: take what is proposed where no option says otherwise, and save.";
    internal const string AddNeeds = "A new exercise needs --line and --title. In a terminal, without --yes, they are asked for.";
    internal const string AskMode = "Scale: major, minor, harmonic-minor, melodic-minor, dorian, phrygian, lydian, mixolydian";
    internal const string AskLine = "The line in degrees with beats, such as 1 2 3:2 -:1; or only Enter, to play it on the piano";
    internal const string AskTempo = "Tempo, beats a minute";
    internal const string AskArticulation = "legato, staccato, marcato or glide";
    internal const string AskDynamics = "Loudness, one word or a course, such as p mf p";
    internal const string AskSyllables = "Syllables, one for each note or one for all; ~ carries on; the vowel in IPA after a slash where the spelling does not tell it";
    internal const string AskPurposes = "What it trains";
    internal const string AskStage = "Stage: humming, lip-trill, slide, sung, settling";
    internal const string AskTitle = "Title";
    internal const string AskId = "Its id in plans";
    internal const string AskInstruction = "A sentence to the singers, or only Enter";
    internal const string PlayNow = "Play it once, one note after the other, then press Enter here.";
    internal const string NothingHeard = "Nothing was heard. Type the line, or press Enter to try again.";
    internal const string AskHeard = "Enter takes it so; or type it as it should be: ";
    internal const string NotAdded = "Nothing was written. This command gives the same again:";

    internal static string Ask(string question, string proposed) => proposed.Length == 0 ? $"{question}: " : $"{question} [{proposed}]: ";

    internal static string AskTonic(string first) => $"Which note is 1, the tonic? [{first}]: ";

    internal static string Heard(string line) => $"Heard: {line}";

    internal static string AskSave(string path) => $"Save it as {path}? y saves, Enter drops it: ";

    internal static string AddFieldAbout(string field) => field switch
    {
        "pattern" => "The line in degrees with beats, as in exercise files: \"1:1/2 2:1/2 3 -:1\".",
        "syllables" => "One for each note or one for all, the vowel in IPA after a slash: \"noo/u ~ mah/a\".",
        "tempo" => "Beats a minute.",
        "purposes" => "What it trains, with commas between. Default: what it can be seen to serve.",
        "stage" => "humming, lip-trill, slide, sung or settling. Default: by its sounds.",
        "id" => "As plans name it. Default: the words of the title.",
        _ => $"As '{field}' in exercise files (docs/plan-format.md).",
    };

    internal const string ExportAbout = "Take a plan along: as notes to play, as notes to read, as a page for the person at the piano; for one part alone with --part. Several at once are fine.";
    internal const string MidiAbout = "A Standard MIDI File: the piano and a track for each part, with words and markers.";
    internal const string MusicXmlAbout = "A MusicXML score: every exercise once, in its first key, with chord symbols and all its keys.";
    internal const string SheetAbout = "One page for the music stand (HTML): order, keys, cue chords, tempos, who sings, minutes.";
    internal const string ExportPartAbout = "For a singer of this part at home (its id or letter): only keys that it sings with ease, and the voice-care card.";
    internal const string ForceAbout = "Write over an earlier export of the same kind.";
    internal const string ExportNothing = "Say what to write: --midi FILE, --musicxml FILE, --sheet FILE, or several of them.";
    internal const string ExportNoSteps = "this plan has no steps to take along";

    internal static string ExportNoKey(string part) => $"no key of this plan lies where {part} sing with ease, so there is nothing to take along for them (warmup keys shows the keys)";

    internal static string ExportManyParts(int parts, int most) =>
        $"a MIDI file has room for the piano and {most} parts, and this choir has {parts}: choose one with --part";

    internal static string ExportLeftOut(string step) => $"Left out, for no key fits: {step}";

    internal const string NeedAbout = "What to work on, until when (needs.yaml); the next plan weighs it.";
    internal const string NeedAddAbout = "Add a need: a pitch, a region or a purpose.";
    internal const string NeedListAbout = "List the needs with their numbers.";
    internal const string NeedDoneAbout = "Mark a need done, by its number.";
    internal const string NeedPartAbout = "A part, a group or everyone. Default: everyone.";
    internal const string NeedPitchAbout = "A sounding pitch, such as F#5.";
    internal const string NeedRegionAbout = "A range of sounding pitches, such as C5-F5.";
    internal const string NeedKindAbout = "The kind of mark it comes from; strained, pressed, tired and hoarse are spared in the next plan, not trained.";
    internal const string NeedPurposeAbout = "What exercises should train, such as tuning.third.";
    internal const string NeedPieceAbout = "The piece it comes from.";
    internal const string NeedBarsAbout = "Its bars, as text, such as 12-15.";
    internal const string NeedUntilAbout = "The last day on which it matters, as 2027-05-22.";
    internal const string NeedNumberAbout = "Its number in the list.";
    internal const string NeedAllAbout = "Also those that are done or past their day.";
    internal const string NoNeeds = "Nothing is needed. Add something with: warmup need add --part alto --pitch E4";

    internal const string PlanEditAbout = "Edit a plan on the screen: steps, keys and reach beside the range board; nothing is written before Ctrl+W.";
    internal const string NothingToEdit = "There are no steps to edit: this is a rehearsal without warm-up, or a run without a plan.";

    internal static string PlanSaved(string path) => $"Written: {path}";

    internal static string PlanSavedBeside(string path, string reason, string beside) => $"{path}: {reason}. Written beside it: {beside}";

    internal static string PlanNotSaved(string path, string reason, string trouble) => $"Not written. {path}: {reason}; beside it: {trouble}";

    internal const string HelpAbout = "Say what the command takes.";
    internal const string ShellAbout = "The manual page, and completions for your shell.";
    internal const string ShellManAbout = "The manual page: warmup shell man > warmup.1";
    internal const string ShellBashAbout = "Completions for bash: source <(warmup shell bash)";
    internal const string ShellZshAbout = "Completions for zsh, as a file _warmup in a folder of $fpath.";
    internal const string ShellFishAbout = "Completions for fish, as a file in ~/.config/fish/completions.";

    internal const string ManEnd = """
        .SH EXIT STATUS
        .TP
        0
        good
        .TP
        1
        the check or the review has findings
        .TP
        2
        bad input or use
        .TP
        70
        a fault of the program
        .SH CARE
        Stop at pain; nobody pushes for a note. This is no medical advice: your judgement and that of a licensed professional come first.

        """;

    internal const string TourAbout = "Give the tour of one minute that is given at the first start on a machine.";

    internal const string NothingToCheck = "no plan, nothing to check";
    internal const string NothingRemarked = "nothing to remark";
    internal const string NoNeedOf = "Kept in the log. It names no pitch and no kind that exercises help with, so no need was made of it.";

    internal static string FolderAndPlan(string folder, string plan) => $"{plan} in {folder}";

    internal static string NeedMade(int number, string words) => $"need {number}: {words}";

    internal static string NeedNotKept(string reason) => $"Kept in the log, but no need could be written: {reason}";

    internal static string NeedKept(int number, string words) => $"{number}. {words}";

    internal static string NeedDone(string words) => $"Done: {words}";

    private static string Milliseconds(long nanoseconds) => (nanoseconds / 1e6).ToString("0.000", CultureInfo.InvariantCulture);
}
