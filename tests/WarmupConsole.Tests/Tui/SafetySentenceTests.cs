using System.Reflection;
using System.Text.RegularExpressions;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Storage;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Tui.Keys;
using WarmupConsole.Tui.Presentation;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tests.Tui;

/// <summary>What the director is told about voices, keys and the log is never cut on a usual screen.</summary>
public sealed partial class SafetySentenceTests
{
    private const string LongTitle = "The long crescendo over two octaves and back in contrary motion, with the lanterns lit";

    private const string LongReason =
        "In A♭ the second mezzo-sopranos would need A♭5, 3 semitones above their highest note F5: they would rest. "
        + "In A♭ the baritones and low basses would need A♭4, 4 semitones above their highest note E4: they would rest. "
        + "In A♭ the boys of the treble choir would need A♭5, a semitone above their highest note G5: they would rest.";

    private static readonly Type LiveTexts = typeof(LiveMachine).Assembly.GetType("WarmupConsole.Sessions.Live.LiveTexts", throwOnError: true)!;

    public static TheoryData<string> Sentences() =>
    [
        .. LiveTexts.GetFields(BindingFlags.Public | BindingFlags.Static).Select(field => (string)field.GetRawConstantValue()!),
        .. LiveTexts.GetMethods(BindingFlags.Public | BindingFlags.Static).Where(method => method.ReturnType == typeof(string)).Select(Said),
        LogTexts.QueueFull,
        LogTexts.Failed("The process cannot access the file '/home/choir/saltmarsh/sessions/2027-02-16T19-00-00.jsonl' because another one uses it"),
    ];

    [Theory]
    [MemberData(nameof(Sentences))]
    public void Every_sentence_is_whole_at_80x24(string sentence)
    {
        foreach (bool trouble in (bool[])[true, false])
        {
            LiveSession session = LiveFixture.Rung with { Notice = new(sentence, trouble, LiveFixture.Now) };
            Assert.Contains(sentence, Joined(Model(session), 80, 24), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void All_sentences_are_tried() => Assert.True(Sentences().Count > 25);

    [Fact]
    public void A_long_word_is_broken_and_not_cut()
    {
        string path = "/" + new string('x', 170);
        Assert.Contains(path, Regex.Replace(Joined(Model(LiveFixture.Rung with { Notice = new(path, true, LiveFixture.Now) }), 80, 24), " ", ""), StringComparison.Ordinal);
    }

    [Fact]
    public void A_long_notice_borrows_rows_of_the_keys_and_leaves_silence_and_the_way_to_the_others()
    {
        LiveSession session = LiveFixture.Rung with { Notice = new(LongReason[..200], true, LiveFixture.Now) };
        ScreenModel model = Model(session) with { Keys = new ScreenControl(new FakeLiveConsole(session)).Hints };
        string screen = ScreenPresenter.Draw(model, 80, 24).ToString();
        Assert.Contains("Tab silence", screen);
        Assert.Contains("? keys", screen);
        Assert.Contains("D♭ major, key 2 of 9", screen);
    }

    [Fact]
    public void The_key_that_a_warning_names_is_the_one_that_obeys()
    {
        Assert.Equal("Enter", Assert.Single(KeyTable.Rows, row => row.Action == LiveAction.OneMoreKey).Label);
        Assert.StartsWith("Enter again ", Said(LiveTexts.GetMethod("BeyondExtreme")!), StringComparison.Ordinal);
    }

    [Fact]
    public void That_the_log_cannot_be_written_is_told_once()
    {
        string told = LogTexts.Failed(StorageTexts.Unwritable("the disk is full"));
        Assert.Equal("Go on: all is kept, and leaving asks where to save it. The log cannot be written: the disk is full.", told);
    }

    [Fact]
    public void The_sound_is_told_whole_before_the_start_and_on_the_page_of_the_keys_and_shortly_while_it_runs()
    {
        const string sound = "Nothing sounds: no MIDI port found. Connect and switch on the piano, then start again; --record FILE keeps what would sound.";
        ConsoleStatus status = new(sound, "log", false);
        Assert.Contains(sound, Joined(Model(LiveFixture.Ready) with { Status = status }, 80, 24));
        Assert.Contains(sound, Joined(Model(LiveFixture.Rung) with { Status = status, HelpOpen = true }, 80, 24));
        Assert.Contains("Nothing sounds: no MIDI port found. ? says more.", Joined(Model(LiveFixture.Rung) with { Status = status }, 80, 24));
        Assert.DoesNotContain("Connect", Joined(Model(LiveFixture.Rung) with { Status = status }, 80, 24));
    }

    private static string Said(MethodInfo method) => (string)method.Invoke(null, [.. method.GetParameters().Select(Argument)])!;

    private static object Argument(ParameterInfo parameter) => parameter.Name switch
    {
        "title" => LongTitle,
        "key" => "A♭",
        "who" => "the sopranos, the altos",
        "state" => LiveState.Introduce,
        "action" => LiveAction.OneMoreKey,
        _ => LongReason,
    };

    private static ScreenModel Model(LiveSession session) => new(session, new("Sound: none", "log", false), MarkLine.Closed, LiveFixture.Now);

    private static string Joined(ScreenModel model, int width, int height) =>
        Blanks().Replace(ScreenPresenter.Draw(model, width, height).ToString(), " ");

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
