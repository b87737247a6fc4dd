namespace WarmupConsole.Sessions.Live;

/// <summary>All that the live machine says to a director. Keys are named by what they do, as the screen knows which ones they are; a warning names the key itself, and a test keeps it right.</summary>
internal static class LiveTexts
{
    public const string NotStarted = "The warm-up has not started; go on starts it.";
    public const string Over = "The warm-up is over; marks can still be typed.";
    public const string NoPlan = "There is no plan to lead: put in an exercise, or type marks; end closes the session.";
    public const string NothingSungYet = "Nothing was led in this step yet; go on begins it.";
    public const string KeysNotBegun = "The keys have not begun; go on leads in to the first.";
    public const string NoKeys = "This step has no keys.";
    public const string MusicRuns = "The music runs; silence or pause stops it.";
    public const string IsHeld = "It is held; go on leads in again.";
    public const string IsNotPaused = "It is not paused.";
    public const string Waits = "It waits at every key; go on leads to the next.";
    public const string LastStep = "This is the last step; end closes the warm-up.";
    public const string NotLastStep = "Another step follows.";
    public const string FirstStep = "This is the first step.";
    public const string LastKey = "This is the last key.";
    public const string NotLastKey = "Another key follows.";
    public const string LastPhase = "This is the last phase.";
    public const string NotLastPhase = "Another phase follows.";
    public const string Quickest = "This is the quickest tempo, of 20 to 300 bpm.";
    public const string Slowest = "This is the slowest tempo, of 20 to 300 bpm.";
    public const string NothingToTurnTo = "There is no key behind this one to turn back to.";
    public const string NoMark = "There is no mark to take back or move.";
    public const string FirstRung = "This mark already belongs to the first key of its step.";
    public const string SayWhich = "It needs a name: a key, parts, an exercise, or what the piano plays.";
    public const string NothingToAccompany = "Nothing is sung in this step: the piano has nothing to play.";
    public const string BreathLimits = "A breath between two keys lasts 1 to 8 beats; this is the end of it, or the step has no keys.";
    public const string LeadsOn = "The piano leads to the next key; ask again once it is sung.";
    public const string ChordIsWhole = "Every part has its tone; the key for the held chord releases it.";
    public const string AloneToTheEnd = "alone to the end of this key; then its first note, and it waits";
    public const string PartsChanged = "other parts";
    public const string PutIn = "put in";
    public const string TonightIsToldBefore = "Tonight is told before the start; from here on choose who sings.";
    public const string TonightAsUsual = "tonight as usual";
    public const string RehearsalComesAfter = "Marks of the rehearsal come after the warm-up; end closes it.";
    public const string NotLate = "It is not late: nothing has to be cut.";
    public const string NothingToCut = "It is late, and no cut fits: what is left is short, or breathes, opens the voices, answers what was heard, or settles.";
    public const string Late = "late";
    public const string Follows = "The console follows and is silent: play the chord or the line of a key; go on takes the next one by hand.";
    public const string Leads = "The console leads again.";
    public const string FollowWaits = "While it follows, what is played decides when the next key comes; follow again lets the console lead.";
    public const string TurnedRound = "turned round";
    public const string OneMoreKey = "one more key";

    public static string TonightIs(string words) => $"tonight: {words}";

    public static string TempoTapped(string tempo) => $"tapped: {tempo}";

    public static string KeyAdded(string key) => $"one more key: {key}";

    public static string TapOn(string missing) => $"tapping: {missing} to go";

    public static string JumpedTo(string key) => $"jumped to {key}";

    public static string NobodySingsIn(string key) => $"No part can sing {key} in this exercise.";

    public static string NoKeyFor(string who) => $"No key that is left fits {who}: nothing was changed.";

    public static string NowSing(string who) => $"now sing: {who}";

    public static string NoOctaveFor(string who) => $"In no key that is left can {who} sing an octave lower or higher.";

    public static string OctaveHigher(string who) => $"an octave higher: {who}";

    public static string OctaveLower(string who) => $"an octave lower: {who}";

    public static string OwnOctave(string who) => $"in their own octave: {who}";

    public static string BreathOf(string beats) => $"breath, in beats: {beats}";

    public static string PianoFromNextKey(string words) => $"piano, from the next key: {words}";

    public static string PianoFromKeyAfter(string words) => $"piano, from the key after this one: {words}";

    public static string PianoOnceItLeads(string words) => $"piano, once the console leads again: {words}";

    public static string PianoPlaysThat(string words) => $"The piano plays that already: {words}.";

    public static string ToneHeld(string part) => $"held: up to {part}";

    public static string PutInNext(string title) => $"put in: {title}";

    public static string NoWayBack(string title, string saved) => $"no way back in {title}, saves {saved}";

    public static string LeaveOut(string title, string saved) => $"without {title}, saves {saved}";

    public static string Cut(string words) => $"cut: {words}";

    public static string Skipped(string title, string reason) => $"Passed over: {title}. {reason}";

    public static string NothingToLead => "It has nothing to sing or count.";

    public static string NobodySings(string key) => $"No part can sing {key}: the ladder ends here.";

    /// <summary>What to press comes first, and by the key's own name: that is what a glance must find.</summary>
    public static string BeyondExtreme(string warning) => $"Enter again sings it all the same. {warning}";

    public static string CannotFollow(string key, string who) => BeyondExtreme($"In {key} {who} cannot follow in the octave sung now.");

    /// <summary>Why an action that no transition knows does nothing in a state.</summary>
    public static string NotIn(LiveState state, LiveAction action) => (state, action) switch
    {
        (LiveState.Ready, _) => NotStarted,
        (LiveState.Finished, _) => Over,
        (LiveState.Phase, LiveAction.Accompany) => NothingToAccompany,
        (LiveState.Phase, _) => NoKeys,
        (LiveState.Follow, _) => FollowWaits,
        (_, LiveAction.OneMoreKey or LiveAction.TurnRound) => KeysNotBegun,
        _ => NothingSungYet,
    };
}
