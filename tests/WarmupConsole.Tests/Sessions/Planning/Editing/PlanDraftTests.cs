using System.Text;
using CsCheck;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Editing;
using WarmupConsole.Storage.Plans;
using WarmupConsole.Tests.Sessions.Live;

namespace WarmupConsole.Tests.Sessions.Planning.Editing;

public class PlanDraftTests
{
    private static readonly Exercise Siren = LiveFixtures.Scale with { Id = "siren", Title = "Siren", Purposes = [Purpose.Legato] };
    private static readonly Dictionary<string, Exercise> Exercises = new Exercise[] { LiveFixtures.Breath, LiveFixtures.Scale, Siren }.ToDictionary(exercise => exercise.Id);

    private static PlanDraft Draft { get; } = PlanDraft.Of(LiveFixtures.Choir, LiveFixtures.Whole.Plan, Exercises);

    [Fact]
    public void A_step_moves_and_stays_chosen()
    {
        PlanDraft moved = Draft.Move(1).Move(1).Move(1);

        Assert.Equal([1, 2, 0], moved.Origins);
        Assert.Equal(2, moved.Selected);
        Assert.Equal("counted-breath", moved.Step!.Exercise.Id);
        Assert.Equal(Draft.Warmup.Planned, moved.Warmup.Planned);
    }

    [Fact]
    public void What_is_put_in_comes_behind_the_step_and_is_new()
    {
        PlanDraft more = Draft.Insert(Siren);

        Assert.Equal((4, 1, (int?)null), (more.Warmup.Steps.Count, more.Selected, more.Origins[1]));
        Assert.Equal(Draft.Warmup.Planned + more.Step!.Planned, more.Warmup.Planned);
        Assert.Equal(Draft.Warmup.Plan.Steps, more.Remove().Warmup.Plan.Steps);
    }

    [Fact]
    public void Another_exercise_keeps_the_keys_of_the_step_and_its_place_in_the_file()
    {
        PlanDraft other = Draft.Select(1).Replace(Siren);

        Assert.Equal(("siren", 1, 3), (other.Step!.Exercise.Id, other.Origins[1], other.Step.Plan.Keys.MostKeys));
        Assert.Equal(new PlanStep { ExerciseId = "siren" }.Keys, Draft.Replace(Siren).Step!.Plan.Keys);
    }

    [Fact]
    public void An_empty_plan_takes_its_first_step()
    {
        PlanDraft empty = Draft.Remove().Remove().Remove();

        Assert.Null(empty.Step);
        Assert.Equal(empty.Warmup.Steps, empty.Remove().Move(1).Replace(Siren).Change(StepField.Reach, 1).Warmup.Steps);
        Assert.Equal("siren", empty.Insert(Siren).Step!.Exercise.Id);
    }

    [Fact]
    public void More_reach_never_gives_fewer_keys()
    {
        PlanDraft step = PlanDraft.Of(LiveFixtures.Choir, new() { Steps = [new() { ExerciseId = "siren" }] }, Exercises);
        PlanDraft wider = step.Change(StepField.Reach, 3);

        Assert.Equal(30, wider.Step!.Plan.Keys.ReachPercent);
        Assert.True(wider.Step.Ladder.Rungs.Count >= step.Step!.Ladder.Rungs.Count);
    }

    [Fact]
    public void Every_field_goes_round_or_stops_within_what_a_file_may_say()
    {
        Gen.Select(Gen.Enum<StepField>(), Gen.Int[-3, 3]).Array[1, 60].Sample(notches =>
        {
            PlanDraft draft = notches.Aggregate(PlanDraft.Of(LiveFixtures.Choir, new() { Steps = [new() { ExerciseId = "siren" }] }, Exercises), (now, notch) => now.Change(notch.Item1 == StepField.Rounds ? StepField.Talk : notch.Item1, notch.Item2));
            string yaml = PlanFile.Write(draft.Warmup.Plan);
            return PlanFile.Read("", Encoding.UTF8.GetBytes(yaml), new([.. Exercises.Values], LiveFixtures.Choir)).IsGood;
        });
    }

    [Fact]
    public void A_tempo_stays_where_the_exercise_still_serves()
    {
        PlanStep slow = Enumerable.Range(0, 200).Aggregate(Draft.Select(1), (draft, _) => draft.Change(StepField.Tempo, -1)).Step!.Plan;
        Assert.Equal(Siren.Tempo.Slowest, slow.Tempo);
    }

    [Fact]
    public void Most_keys_begins_at_what_there_is_and_ends_at_as_many_as_fit()
    {
        PlanDraft draft = PlanDraft.Of(LiveFixtures.Choir, new() { Steps = [new() { ExerciseId = "siren" }] }, Exercises);
        int keys = draft.Step!.Ladder.Rungs.Select(rung => rung.Tonic.Midi).Distinct().Count();

        Assert.Equal(keys - 1, draft.Change(StepField.MostKeys, -1).Step!.Plan.Keys.MostKeys);
        Assert.Null(draft.Change(StepField.MostKeys, 1).Step!.Plan.Keys.MostKeys);
        Assert.Equal(LadderShape.Up, draft.Change(StepField.Shape, 1).Step!.Plan.Keys.Shape);
    }

    [Fact]
    public void What_trains_the_same_comes_first_among_alternatives()
    {
        Exercise same = Siren with { Id = "same", Title = "Z same" };
        Exercise stage = Siren with { Id = "stage", Title = "A stage", Purposes = [] };

        Assert.Equal(["same", "stage", "counted-breath"], Alternatives.Of(Siren, [LiveFixtures.Breath, stage, Siren, same]).Select(exercise => exercise.Id));
        Assert.Equal([Purpose.Legato], Alternatives.Shared(Siren, same));
    }
}
