using WarmupConsole.Music.Rhythm;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage;

/// <summary>Every sentence that storage says about files. What is wrong, what is allowed, what to do.</summary>
public static class StorageTexts
{
    public const string TooLarge = "the file is larger than 1 MB, which no file of a choir is; check that it is the right one";
    public const string NotUtf8 = "here the file is not UTF-8 text; save it again as UTF-8 in your editor";
    public const string TabIndent = "a tab stands where spaces must set lines in; put spaces in its place";
    public const string Empty = "the file is empty; it must begin with format: 1";
    public const string TopNotNames = "the file must hold names with values, beginning with format: 1";
    public const string Anchor = "anchors (&name) and properties are not read; write the value out";
    public const string Alias = "aliases (*name) are not read; write the value out";
    public const string Tag = "tags (!name) are not read; leave it out";
    public const string TooDeep = "values are nested more than 60 deep, which no file of a choir is";
    public const string SecondDocument = "a second document begins here (---); put it into a file of its own";
    public const string NoSuchFolder = "there is no such folder; check the path";
    public const string NoSuchFile = "there is no such file; check the path";
    public const string AlreadyThere = "there is already such a file, and nothing is overwritten; choose another name or move that one";
    public const string ThereUnlessForced = "there is already such a file; choose another name, or write over it with --force";
    public const string OtherKind = "the file that is there is no earlier export of this kind, so it is not written over; choose another name";
    public const string IsFolder = "this is a folder; add a file name to it";
    public const string TwoFilesOneName = "two files are to have this name; give each its own";
    public const string TempoOrder = "the tempo must be named so that from <= default <= to, and last lies between them as well";
    public const string VoiceForEveryone = "a line for everyone is the pattern of the exercise itself; name parts or groups here";
    public const string NameNotText = "a name must be a single word, not a list or further names";

    public static string Unreadable(string reason) => $"it cannot be read: {reason}";

    public const string ChangedMeanwhile = "it was changed by another program since it was read, and is left alone";

    public static string Unwritable(string reason) => $"it cannot be written: {reason}";

    public static string Forbidden(char c) => Printable.IsOrderOverride(c)
        ? $"the invisible character {Printable.Name(c)} shows text in another order than it has; delete it"
        : $"the control character {Printable.Name(c)} may not stand in a file; delete it";

    public static string NotYaml(string reason) => $"this cannot be read as YAML: {reason.TrimEnd('.')}; check indentation, colons, quotes and brackets";

    public static string NewerFile(string format) =>
        $"the file has format {format}, and this program knows formats up to {FormatCheck.Newest}; update the program";

    public static string Twice(string name) => $"'{name}' stands here a second time; keep one of them";

    public static string NotAPedal(string name, string allowed) => $"{name} is none of: {allowed}. Write one of them, or leave the line out and teach it with Ctrl+L while a warm-up runs.";

    public static string PedalTwice(string name, string other) => $"{name} is the same control as {other}: one control does one thing. Leave one of the two out.";

    public static string Missing(string what, string name) => $"{what} needs '{name}'; add it";

    public static string Unknown(string what, string name, IReadOnlyList<string> candidates) =>
        $"{what} has no '{name}'; {Offer(candidates)}";

    public static string WrongType(string name, string wanted, YamlNode found) =>
        $"'{name}' must be {wanted}, and here is {(found is YamlText { Value.Length: > 0 } text ? $"'{Short(text.Value)}'" : found.Words)}";

    public static string EmptyText(string name) => $"'{name}' is empty; write a text";

    public static string TooLong(string name, int most) => $"'{name}' is longer than {most} characters; shorten it";

    public static string NotAnId(string name, string value) =>
        $"'{name}' is '{Short(value)}', but must be lower-case letters, digits and hyphens, at most 60, such as five-note-scale";

    public static string NotWhole(string name, Limits limits) => $"'{name}' must be a whole number from {limits}";

    public static string OutOfRange(string name, string value, Limits limits) => $"'{name}' is {Short(value)}, which is out of range ({limits})";

    public static string WrongCount(string name, int count, Limits limits) => $"'{name}' has {count} entries, which is out of range ({limits})";

    public static string NotAChoice(string name, string value, IReadOnlyList<string> choices) =>
        $"'{name}' cannot be '{Short(value)}'; write one of {string.Join(", ", choices)}";

    public static string ComfortableOutside(string comfortable, string extreme) =>
        $"the comfortable range {comfortable} lies partly outside the extreme range {extreme}; narrow one or widen the other";

    public static string AlreadyUsed(string name, string value, int line) =>
        $"{name} '{Short(value)}' is already used in line {line}; choose another";

    public static string ReservedName(string value) => $"'{value}' always has a meaning of its own; choose another name";

    public static string PatternMissing(string stage) => $"a {stage} exercise needs a pattern to sing";

    public static string VoiceTooLong(Beats voice, Beats pattern) =>
        $"with its offset this voice lasts {voice} beats and the pattern {pattern}; shorten it, or give the pattern rests at its end";

    public static string PhasesMissing(string stage) => $"a {stage} exercise needs phases";

    public static string NotForStage(string name, string stage) => $"'{name}' has no meaning in a {stage} exercise; leave it out";

    public static string HoldTooLong(int counts) => $"a hold of {counts} counts is too long; holds are short, at most 4";

    public static string InField(string name, string message) => $"'{name}': {message}";

    public static string UnknownExercise(string id, IReadOnlyList<string> near) =>
        $"there is no exercise '{Short(id)}'; {(near.Count > 0 ? Offer(near) : "look in the exercises folder and the catalogue")}";

    public static string UnknownLimit(string id, IReadOnlyList<string> names) =>
        $"there is no part or group '{Short(id)}' in this choir; write one of {string.Join(", ", names)}";

    public static string UnknownMarkKind(string id, IEnumerable<string> names) =>
        $"there is no kind of mark '{Short(id)}' in this choir; write one of {string.Join(", ", names)}";

    public static string RoundsWhenSung(string id) => $"'rounds' is for body and breathing exercises, and '{id}' is sung; use keys and most";

    public static string TempoOfKeys(string id) => $"a tempo that changes from key to key is for sung exercises, and '{id}' is counted; write one tempo";

    public static string SameExercise(string id, string place) => $"the exercise '{id}' is already in {place}; give this one another id";

    public const string LastTempoSung = "a tempo of the last key is for sung exercises, and this one is counted; leave 'last' out";

    public static string LineIsSung(string stage) => $"a line of degrees is sung, so the stage cannot be {stage}; write one of humming, lip-trill, slide, sung, settling";

    public static string IdTaken(string id) => $"there is an exercise '{Short(id)}' already; choose another id";

    public const string NotEmpty = "there is something in it already, and nothing is overwritten; name a folder that is empty or not there yet";

    public const string NeedOfOneKind = "a need names exactly one of pitch, region and purpose";
    public const string NeedsNotLast = "the need cannot be added, because the list 'needs' is not the last thing in the file or is written in one line; add it by hand, or move the list to the end";

    public static string NoSuchNeed(int number, int count) => count == 0
        ? "there are no needs yet; add one first (warmup need add)"
        : $"there is no need {number}; the numbers go from 1 to {count} (warmup need list)";

    public static string NeedIsDone(int number) => $"need {number} is done already";

    public const string BareWithSteps = "a bare rehearsal has no warm-up, so it has no steps; leave out 'bare' or the steps";

    public static string UnknownRule(string name, IReadOnlyList<string> candidates) => $"the check has no rule '{Short(name)}'; {Offer(candidates)}";

    public static string NoScorePart(string key, IEnumerable<string> keys) => $"the score has no part '{Short(key)}'; write one of {Short(string.Join(", ", keys), 200)}";

    public static string NoScoreVoice(string voice, IEnumerable<string> voices) => string.Join(", ", voices) is { Length: > 0 } known
        ? $"this part of the score has no voice '{Short(voice)}'; write one of {Short(known, 200)}"
        : "this part of the score has one voice only; leave 'voice' out";

    private static string Offer(IReadOnlyList<string> names) => names.Count == 1
        ? $"did you mean '{names[0]}'?"
        : $"did you mean one of {string.Join(", ", names)}?";

    private static string Short(string value, int most = 40) => value.Length <= most ? value : value[..most] + "…";
}
