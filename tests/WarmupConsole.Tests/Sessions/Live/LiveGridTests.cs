using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Tests.Sessions.Live;

/// <summary>
/// Every state with every hold, and every action in it: acts ("x"), or is refused for a reason named by a letter. The sessions stand
/// in the middle of things, with a step and a key before and behind them; what the ends refuse is in <see cref="RefusalTests"/>.
/// </summary>
public class LiveGridTests
{
    internal const string Columns = "GoOn Silence Pause Repeat StepBack StepOn OneMoreKey TurnRound Faster Slower TapTempo RollOrWait CueAgain LongerBreath ShorterBreath HoldChord BuildChord ProofNote JumpToKey ChooseParts SwapOctave Accompany InsertNext InsertNow TakeCut Follow End";

    internal static readonly Dictionary<string, string> Reasons = new()
    {
        ["n"] = "The warm-up has not started; go on starts it.",
        ["o"] = "The warm-up is over; marks can still be typed.",
        ["s"] = "Nothing was led in this step yet; go on begins it.",
        ["b"] = "The keys have not begun; go on leads in to the first.",
        ["a"] = "Nothing is sung in this step: the piano has nothing to play.",
        ["k"] = "This step has no keys.",
        ["p"] = "The piano leads to the next key; ask again once it is sung.",
        ["f"] = "While it follows, what is played decides when the next key comes; follow again lets the console lead.",
        ["l"] = "It is not late: nothing has to be cut.",
        ["m"] = "The music runs; silence or pause stops it.",
    };

    public static TheoryData<LiveState, Hold, string> Grid => new()
    {
        { LiveState.Ready, Hold.None, "x x n n n n n n n n n x n n n n n n n n n n x x n x x" },
        { LiveState.Introduce, Hold.None, "x x x s x x b b x x x x x x x x x x x x x x x x l x x" },
        { LiveState.Introduce, Hold.Paused, "x x x s x x b b x x x x x x x x x x x x x x x x l x x" },
        { LiveState.Cue, Hold.None, "m x x x x x x x x x x x x x x x x x x x x x x x l x x" },
        { LiveState.Cue, Hold.Paused, "x x x x x x x x x x x x x x x x x x x x x x x x l x x" },
        { LiveState.Cue, Hold.Silenced, "x x x x x x x x x x x x x x x x x x x x x x x x l x x" },
        { LiveState.CountIn, Hold.None, "m x x x x x x x x x x x x x x x x x x x x x x x l x x" },
        { LiveState.CountIn, Hold.Paused, "x x x x x x x x x x x x x x x x x x x x x x x x l x x" },
        { LiveState.CountIn, Hold.Silenced, "x x x x x x x x x x x x x x x x x x x x x x x x l x x" },
        { LiveState.Rung, Hold.None, "m x x x x x x x x x x x x x x x x x x x x x x x l x x" },
        { LiveState.Rung, Hold.Paused, "x x x x x x x x x x x x x x x x x x x x x x x x l x x" },
        { LiveState.Rung, Hold.Silenced, "x x x x x x x x x x x x x x x x x x x x x x x x l x x" },
        { LiveState.Breath, Hold.None, "m x x x x x x x x x x x x x x x x p x x x x x x l x x" },
        { LiveState.Breath, Hold.Paused, "x x x x x x x x x x x x x x x x x x x x x x x x l x x" },
        { LiveState.Breath, Hold.Silenced, "x x x x x x x x x x x x x x x x x x x x x x x x l x x" },
        { LiveState.Wait, Hold.None, "x x x x x x x x x x x x x x x x x x x x x x x x l x x" },
        { LiveState.Wait, Hold.Paused, "x x x x x x x x x x x x x x x x x x x x x x x x l x x" },
        { LiveState.Follow, Hold.None, "x x x x x x x x x x x f x x x x x x x x x x x x l x x" },
        { LiveState.Follow, Hold.Paused, "x x x x x x x x x x x f x x x x x x x x x x x x l x x" },
        { LiveState.Phase, Hold.None, "x x x x x x k k x x x x k k k k k k k k k a x x l x x" },
        { LiveState.Phase, Hold.Paused, "x x x x x x k k x x x x k k k k k k k k k a x x l x x" },
        { LiveState.Phase, Hold.Silenced, "x x x x x x k k x x x x k k k k k k k k k a x x l x x" },
        { LiveState.Finished, Hold.None, "o x o o o o o o o o o o o o o o o o o o o o o o o o o" },
    };

    /// <summary>Holds that no input leads to: nothing runs there that could be held.</summary>
    private static readonly (LiveState State, Hold Hold)[] Unreachable =
    [
        (LiveState.Ready, Hold.Paused), (LiveState.Ready, Hold.Silenced), (LiveState.Introduce, Hold.Silenced),
        (LiveState.Wait, Hold.Silenced), (LiveState.Follow, Hold.Silenced), (LiveState.Finished, Hold.Paused), (LiveState.Finished, Hold.Silenced),
    ];

    [Fact]
    public void The_grid_is_whole()
    {
        IEnumerable<(LiveState, Hold)> listed = Grid.Select(row => (row.Data.Item1, row.Data.Item2)).Concat(Unreachable);
        IEnumerable<(LiveState, Hold)> all = from state in Enum.GetValues<LiveState>() from hold in Enum.GetValues<Hold>() select (state, hold);

        Assert.Equal(all.Order(), listed.Order());
        Assert.Equal(Enum.GetNames<LiveAction>(), Columns.Split(' '));
    }

    [Theory]
    [MemberData(nameof(Grid))]
    public void Every_action_acts_or_is_refused_with_its_reason(LiveState state, Hold hold, string row)
    {
        LiveSession session = LiveSituations.Of(state, hold).Session;
        Assert.Equal((state, hold), (session.State, session.Hold));
        foreach ((LiveAction action, string cell) in Enum.GetValues<LiveAction>().Zip(row.Split(' ')))
        {
            string? reason = LiveMachine.WhyNot(session, action, session.Clocks.Since);
            LiveOutcome outcome = LiveMachine.Handle(session, Input(action), session.Clocks.Since);

            Assert.Equal((action, Reasons.GetValueOrDefault(cell)), (action, reason));
            string? told = outcome.Session.Notice?.Text;
            Assert.Equal((action, reason), (action, IsAnswer(told) ? null : told));
            if (reason is not null)
            {
                Assert.Empty(outcome.Effects);
                Assert.Equal(session, outcome.Session with { Notice = session.Notice });
            }
            else
            {
                Assert.True(outcome.Effects.Count > 0 || outcome.Session != session, $"{action} did nothing.");
            }
        }
    }

    /// <summary>The action, with what it has to name.</summary>
    private static LiveInput Input(LiveAction action) => action switch
    {
        LiveAction.JumpToKey => new LiveInput.JumpTo(Pitch.Parse("Eb4")),
        LiveAction.ChooseParts => new LiveInput.Sing(["alto"]),
        LiveAction.SwapOctave => new LiveInput.SwapOctave("soprano"),
        LiveAction.Accompany => new LiveInput.Accompany(AccompanimentStyle.Drone),
        LiveAction.InsertNext or LiveAction.InsertNow => new LiveInput.Insert(WarmupBuilder.Alone(LiveFixtures.Choir, LiveFixtures.Scale), "", action == LiveAction.InsertNow),
        _ => new LiveInput.Act(action),
    };

    private static bool IsAnswer(string? told) =>
        Array.Exists(["one more key: ", "tapping: 3", "breath, in beats: ", "held: up to ", "alone to ", "now sing: ", "put in: ", "piano, ", "an octave ", "The console "], answer => told?.StartsWith(answer, StringComparison.Ordinal) == true);

    [Theory]
    [MemberData(nameof(Grid))]
    public void Time_moves_on_what_runs_and_nothing_else(LiveState state, Hold hold, string row)
    {
        Assert.NotEmpty(row);
        LiveSession session = LiveSituations.Of(state, hold).Session;
        Moment hourLater = session.Clocks.Since + TimeSpan.FromHours(1);

        LiveOutcome outcome = LiveMachine.Handle(session, new LiveInput.TimePassed(), hourLater);

        bool runs = hold == Hold.None && state is LiveState.Cue or LiveState.CountIn or LiveState.Rung or LiveState.Breath or LiveState.Phase;
        Assert.Equal(runs && hold == Hold.None, outcome.Effects.Count > 0);
        Assert.True(runs || outcome.Session == session);
    }

    [Theory]
    [MemberData(nameof(Grid))]
    public void Silence_is_sent_in_every_state(LiveState state, Hold hold, string row)
    {
        Assert.NotEmpty(row);
        LiveDriver driver = LiveSituations.Of(state, hold);
        long before = driver.Session.Generation;

        driver.Act(LiveAction.Silence);

        Assert.Equal(new LiveEffect.Silence(before + 1), driver.Newest[0]);
        Assert.Equal(before + 1, driver.Session.Generation);
    }
}
