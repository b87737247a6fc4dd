using System.Globalization;
using WarmupConsole.Midi.Playing;

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
    internal const string PlanAbout = "The plan's file, or a choir's folder. Without it: the newest plan of the choir folder you are in, or a built-in quarter of an hour.";
    internal const string PortAbout = "Play on the first MIDI port whose name contains NAME; 'none' plays nowhere. Default: the one in your settings, else the first instrument found.";
    internal const string RecordAbout = "Keep what is played as a Standard MIDI File (a new file).";
    internal const string TraceAbout = "Keep every message with the time it was sent, a line each (a new file), and say at the end how punctual the notes were; for measuring.";
    internal const string OpenAbout = "Run without any plan: clocks and marks only.";
    internal const string ResumeAbout = "Go on with a run that was cut off, without asking.";
    internal const string AnewAbout = "Start anew although a run was cut off, without asking.";
    internal const string ChoirAbout = "The choir's folder (the one with choir.yaml). Default: the folder you are in.";
    internal const string JsonAbout = "Print JSON for other programs.";
    internal const string PortsAbout = "List the MIDI ports and what would be played on.";
    internal const string TestAbout = "Play a quiet scale and a chord, to hear whether it is the right instrument.";
    internal const string UseAbout = "Remember NAME for every warm-up on this machine; 'none' for silence, '' to forget it.";
    internal const string PortFromOption = "chosen with --port";
    internal const string ReviewAbout = "What the last warm-up showed: steps, marks, and a table of marked and sung pitches.";
    internal const string SessionAbout = "A session log. Default: the newest one of the choir.";
    internal const string PlanGroupAbout = "Plans from what was heard.";
    internal const string NextAbout = "Write the next plan: it answers the last session's marks and changes some exercises for variety.";
    internal const string DateAbout = "The day of the plan, as 2027-02-23. Default: a week after the last plan.";
    internal const string CheckAbout = "Check a plan: order, vowels, ranges, keys, length. Exit code 1 when there are errors.";
    internal const string KeysAbout = "Every key of a plan: who sings, who rests, and how long it takes.";
    internal const string PlayerAbout = "The piano's own process; the console starts it.";

    internal const string HearingCaution = "Quiet now: turn the volume of headphones or loudspeakers down first, then up slowly while it plays.";
    internal const string NoTerminal = "This command needs a terminal: open one and run it there.";
    internal const string NoSessions = "There is no session log yet: lead a warm-up first (warmup run PLAN).";
    internal const string NoSuchPlan = "There is no such plan; check the path.";
    internal const string NotInChoirFolder = "A plan stands in the plans folder of a choir folder, beside choir.yaml; this one does not. Name the choir's folder with --choir FOLDER.";
    internal const string NoStart = "This session log does not say what was run: its first record is missing or cannot be read. Choose another log.";
    internal const string OpenTitle = "Without a plan";
    internal const string NoLogFile = "no session log";
    internal const string Slept = "The computer was asleep. Nothing was lost; go on leads in to the same key again.";
    internal const string NothingSounds = "nothing sounds yet";

    internal static string AndRecording(string sentence, string path) => $"{sentence} Recording to {path}.";

    internal static string PortFromSettings(string path) => $"remembered in {path}; --use '' forgets it";

    internal static string Punctual(OnsetFigures onsets) => string.Create(
        CultureInfo.InvariantCulture,
        $"{onsets.Played} notes played, {onsets.Dropped} left out; late by {Milliseconds(onsets.MedianNanoseconds)} ms (median), {Milliseconds(onsets.Percentile99Nanoseconds)} ms (99 %), {Milliseconds(onsets.WorstNanoseconds)} ms (worst).");

    internal static string NoSuchOption(string word) => $"'{word}' is no option of this command. Ask it with --help what it takes.";

    internal static string BadDate(string text) => $"'{text}' is no date: write year-month-day, such as 2027-02-23.";

    internal static string LogCannotStart(string reason) => $"The session log cannot be written: {reason}. The run goes on; marks are kept here and can be saved elsewhere when you leave.";

    internal static string CutOff(int step, string exercise, string key) =>
        $"This warm-up was cut off at step {step}, {exercise}{key}. Go on there? Enter goes on, n starts anew: ";

    internal static string NotResumed(string sentence) => $"A new run: the last one cannot be gone on with, for {sentence}.";

    internal static string Unsaved(string path) => $"The session log is not saved. Enter saves it to {path}; or type another file name; n drops it: ";

    internal static string SavedTo(string path) => $"Session log: {path}";

    internal static string NotSaved(string path, string reason) => $"{path}: {reason}";

    internal static string LeftOut(string path, long offset, string sentence) => $"{path}, byte {offset}: left out: {sentence}";

    internal static string Internal(string message) => $"The program failed: {message}. Nothing already written to the session log is lost.";

    internal static string PlanWritten(string path) => $"Written to {path}";

    private static string Milliseconds(long nanoseconds) => (nanoseconds / 1e6).ToString("0.000", CultureInfo.InvariantCulture);
}
