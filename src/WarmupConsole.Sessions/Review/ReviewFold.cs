using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Sessions.Review;

/// <summary>Reads a log record by record and keeps what a review needs.</summary>
internal sealed class ReviewFold(IReadOnlyDictionary<string, Exercise> exercises, Choir choir, Plan? plan)
{
    private readonly SortedDictionary<int, StepTally> steps = [];
    private readonly List<SungRung> rungs = [];
    private readonly List<LoggedMark> marks = [];
    private readonly List<ReviewCut> cuts = [];
    private SessionRecord? first;
    private SessionRecord? last;
    private RunStarted? start;
    private StepTally? present;
    private bool isTalk;
    private bool isPaused; // the clocks of the screen stand still then, and these tell the same
    private string ending = SessionReview.CutOff;
    private TimeSpan spent;

    internal void Add(SessionRecord record)
    {
        if (!isPaused && last is not null && last.Epoch == record.Epoch && record.Monotonic > last.Monotonic)
        {
            Spend(record.Monotonic - last.Monotonic);
        }

        first ??= record;
        last = record;
        Apply(record);
    }

    internal SessionReview Finish()
    {
        MarkedRungs marked = new(choir, rungs, marks);
        return new()
        {
            Choir = start?.Choir ?? choir.Name,
            PlanName = start?.PlanName ?? "",
            Start = first!.At,
            End = last!.At,
            Ending = ending,
            Spent = spent,
            Steps = [.. steps.Values.Select(step => step.Finish(TitleOf(step.ExerciseId)))],
            NotBegun = [.. (plan?.Steps ?? []).Index().Where(step => !steps.ContainsKey(step.Index)).Select(step => NotBegun(step.Index, step.Item.ExerciseId))],
            Cuts = [.. cuts],
            PlannedMinutes = plan?.Minutes,
            Rungs = marked.Sung,
            Marks = marked.Marks,
            Counts = marked.Counts,
        };
    }

    private string TitleOf(string exerciseId) => exercises.TryGetValue(exerciseId, out Exercise? known) ? known.Title : exerciseId;

    private ReviewStep NotBegun(int step, string exerciseId) => new(step, exerciseId, TitleOf(exerciseId), TimeSpan.Zero, TimeSpan.Zero, 0, 0);

    private void Spend(TimeSpan time)
    {
        spent += time;
        present?.Spend(time, isTalk);
    }

    private void Apply(SessionRecord record)
    {
        switch (record.Event)
        {
            case RunStarted started:
                start = started;
                break;
            case StepStarted step:
                Begin(step);
                break;
            case HoldChanged hold:
                isPaused = hold.Hold == HoldText.Write(Hold.Paused);
                break;
            case RunEnded ended:
                (ending, present) = (ended.Why, null);
                break;
            case MarkMade or MarkMoved or MarkUndone or MarkWorded:
                ApplyMark(record);
                break;
            default:
                ApplyWork(record.Event);
                break;
        }
    }

    private void Begin(StepStarted step)
    {
        present = Tally(step.Step);
        present.ExerciseId = step.Exercise;
        present.HasKeys = exercises.TryGetValue(step.Exercise, out Exercise? known) ? known.IsSung : step.Keys.Count > 0;
        isTalk = true;
    }

    private void ApplyWork(SessionEvent work)
    {
        switch (work)
        {
            case RungStarted rung:
                Begin(rung);
                break;
            case LeadInStarted:
                isTalk = false;
                break;
            case RungEnded { Whole: true } ended:
                Complete(ended);
                break;
            case RoundStarted round:
                isTalk = false;
                Tally(round.Step).Rounds++;
                break;
            case CutTaken cut:
                cuts.Add(new(cut.Step, TitleOf(cut.Exercise), cut.Keys == 0, TimeSpan.FromSeconds(cut.Seconds)));
                break;
            case RunResumed:
                ending = SessionReview.CutOff;
                break;
        }
    }

    private void Begin(RungStarted rung)
    {
        isTalk = false;
        Pitch tonic = Pitch.Parse(rung.Tonic);
        exercises.TryGetValue(Tally(rung.Step).ExerciseId, out Exercise? exercise);
        rungs.Add(new(rung.Step, rung.Rung, tonic, false, RungPitches.Of(rung, tonic, exercise, choir)));
    }

    private void Complete(RungEnded ended)
    {
        int index = rungs.FindLastIndex(rung => rung.Step == ended.Step && rung.Rung == ended.Rung);
        if (index >= 0 && !rungs[index].Whole)
        {
            rungs[index] = rungs[index] with { Whole = true };
            Tally(ended.Step).Rungs++;
        }
    }

    private void ApplyMark(SessionRecord record)
    {
        switch (record.Event)
        {
            case MarkMade made:
                marks.Add(new(made, made.Step, made.Rung, rungs.Count, false, record.At));
                break;
            case MarkUndone undone:
                marks.RemoveAll(mark => mark.Made.Id == undone.Id);
                break;
            case MarkMoved moved when marks.FindIndex(mark => mark.Made.Id == moved.Id) is >= 0 and int index:
                marks[index] = marks[index] with { Step = moved.Step, Rung = moved.Rung, WasMoved = true };
                break;
            case MarkWorded worded when marks.FindIndex(mark => mark.Made.Id == worded.Id) is >= 0 and int index:
                marks[index] = marks[index].InWords(worded);
                break;
        }
    }

    private StepTally Tally(int step)
    {
        if (!steps.TryGetValue(step, out StepTally? tally))
        {
            tally = new(step, "");
            steps.Add(step, tally);
        }

        return tally;
    }
}
