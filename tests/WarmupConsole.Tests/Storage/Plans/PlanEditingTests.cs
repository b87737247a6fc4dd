using System.Text;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Plans;

namespace WarmupConsole.Tests.Storage.Plans;

public class PlanEditingTests
{
    private const string Yaml = """
        # the choir after the holidays
        format: 1
        title: "Back again" # soft
        minutes: 15

        steps:
          # loosen first
          - exercise: shoulders   # both
            rounds: 2

          - exercise: hum
            keys:
              reach: 20 # not more
            because: ["don't # count this", 'nor # this']
          # the peak
          - {exercise: leap, talk: 20}
          # for the altos

        # rules
        off:
          - {rule: same-plan, because: "on purpose"}

        """;

    [Fact]
    public void Steps_that_only_move_take_their_lines_and_comments_with_them()
    {
        EditedPlan edited = Edit(Yaml, [2, 0, 1], steps => [steps[2], steps[0], steps[1]]);

        Assert.Empty(edited.LostComments);
        Assert.StartsWith("# the choir after the holidays\nformat: 1\ntitle: \"Back again\" # soft\nminutes: 15\n\nsteps:\n", edited.Yaml, StringComparison.Ordinal);
        Assert.Contains("  # the peak\n  - {exercise: leap, talk: 20}\n", edited.Yaml);
        Assert.Contains("  # loosen first\n  - exercise: shoulders   # both\n    rounds: 2\n", edited.Yaml);
        Assert.EndsWith("# rules\noff:\n  - {rule: same-plan, because: \"on purpose\"}\n", edited.Yaml, StringComparison.Ordinal);
    }

    [Fact]
    public void A_changed_step_keeps_the_comments_above_it_and_tells_which_it_loses()
    {
        EditedPlan edited = Edit(Yaml, [0, 1, 2], steps => [steps[0] with { Rounds = 3 }, steps[1], steps[2]]);

        Assert.Equal(["# both"], edited.LostComments);
        Assert.Contains("  # loosen first\n  - exercise: shoulders\n    rounds: 3\n", edited.Yaml);
        Assert.Contains("reach: 20 # not more", edited.Yaml);
    }

    [Fact]
    public void What_is_taken_out_takes_its_comments_along_and_what_is_new_has_none()
    {
        EditedPlan edited = Edit(Yaml, [0, null, 2], steps => [steps[0], new() { ExerciseId = "siren" }, steps[2]]);

        Assert.Equal(["# not more"], edited.LostComments);
        Assert.Contains("  - exercise: siren\n  # the peak\n", edited.Yaml);
    }

    [Theory]
    [InlineData("format: 1\nsteps: [{exercise: hum}, {exercise: leap}] # short\n")]
    [InlineData("{format: 1, steps: [{exercise: hum}, {exercise: leap}]} # short\n")]
    public void A_list_on_one_line_is_written_anew_and_the_loss_told(string yaml)
    {
        EditedPlan edited = Edit(yaml, [1, 0], steps => [steps[1], steps[0]]);

        Assert.Equal(["# short"], edited.LostComments);
        Assert.Contains("  - exercise: leap\n  - exercise: hum\n", edited.Yaml);
    }

    [Theory]
    [InlineData("format: 1\r\nsteps:\r\n- exercise: hum # a\r\n- exercise: leap # b")]
    [InlineData("format: 1\nsteps:\n      - exercise: hum # a\n        talk: 5\n      - exercise: leap # b\n")]
    public void Any_line_ends_and_indents_are_taken(string yaml)
    {
        EditedPlan edited = Edit(yaml, [1, 0], steps => [steps[1], steps[0]]);

        Assert.Empty(edited.LostComments);
        Assert.Matches("leap # b\n(.|\n)*hum # a", edited.Yaml);
    }

    [Fact]
    public void All_steps_but_new_ones_may_go() =>
        Assert.Equal("siren", Read(Edit(Yaml, [null], _ => [new() { ExerciseId = "siren" }]).Yaml).Steps.Single().ExerciseId);

    private static EditedPlan Edit(string yaml, int?[] origins, Func<IReadOnlyList<PlanStep>, IReadOnlyList<PlanStep>> change)
    {
        Plan old = Read(yaml);
        Plan plan = old with { Steps = change(old.Steps) };
        EditedPlan edited = PlanEditing.Write(yaml, old, plan, origins);
        Assert.Equal(PlanFile.Write(plan), PlanFile.Write(Read(edited.Yaml)));
        return edited;
    }

    private static Plan Read(string yaml) => PlanFile.Read("plan.yaml", Encoding.UTF8.GetBytes(yaml)).Value!;
}
