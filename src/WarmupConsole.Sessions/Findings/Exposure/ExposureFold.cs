using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Sessions.Findings.Exposure;

/// <summary>Reads a log record by record and keeps what findings need. Fields that make no sense are passed over: a log is never a reason to stop.</summary>
internal sealed class ExposureFold(Choir choir, IReadOnlyDictionary<string, Exercise> exercises, LineBook lines)
{
    /// <summary>Most warm-ups have about so many or fewer.</summary>
    private const int UsualRungs = 128;

    private readonly List<ExposedRung> rungs = new(UsualRungs);
    private readonly List<(LoggedMark Mark, int Epoch)> marks = [];
    private readonly Dictionary<int, string> steps = [];
    private readonly StepClock clock = new();
    private Tonight tonight = Tonight.AsUsual;
    private SessionRecord? last;
    private TimeSpan spent;
    private int unknown;
    private bool wentBack;

    internal void Add(SessionRecord record)
    {
        if (last is not null)
        {
            spent += last.Epoch == record.Epoch && record.Monotonic > last.Monotonic ? record.Monotonic - last.Monotonic : TimeSpan.Zero;
            wentBack |= record.At < last.At;
        }

        clock.Add(record, last);
        last = record;
        switch (record.Event)
        {
            case StepStarted step:
                steps[step.Step] = step.Exercise;
                break;
            case RungStarted rung:
                Begin(rung, record.Epoch, record.Monotonic);
                break;
            case TonightTold told:
                tonight = TonightFact.Read(told);
                break;
            case RungEnded { Whole: true } ended:
                Complete(ended);
                break;
            case MarkMade made:
                marks.Add((new(made, made.Step, made.Rung, rungs.Count, false, record.At), record.Epoch));
                break;
            case MarkUndone or MarkWorded or MarkMoved:
                Change(record.Event);
                break;
        }
    }

    internal SungSession Finish(string name, DateTimeOffset start)
    {
        MarkAttachment attachment = new(rungs);
        return new()
        {
            Name = name,
            Start = start,
            Rungs = rungs,
            Marks = [.. marks.Where(mark => mark.Mark.Made.Kind is not null).Select(mark => Heard(mark.Mark, attachment.Of(mark.Mark, mark.Epoch)))],
            Exercises = [.. steps.OrderBy(step => step.Key).Select(step => step.Value)],
            Led = clock.Steps,
            Weights = choir.Parts.Where(part => tonight.WeightOf(part) < 1).ToDictionary(part => part.Id, tonight.WeightOf),
            UnknownRungs = unknown,
            WasClockSetBack = wentBack,
        };
    }

    private void Begin(RungStarted rung, int epoch, Moment at)
    {
        string id = steps.GetValueOrDefault(rung.Step, "");
        exercises.TryGetValue(id, out Exercise? exercise);
        unknown += exercise is null ? 1 : 0;
        rungs.Add(new(rung.Step, rung.Rung, rung.Midi, rung.MilliBpm, spent.TotalMinutes, epoch, at.Nanoseconds, lines.Lines(choir, exercise, id, rung)));
    }

    private void Complete(RungEnded ended)
    {
        int index = rungs.Count - 1;
        while (index >= 0 && (rungs[index].Step != ended.Step || rungs[index].Rung != ended.Rung))
        {
            index--;
        }

        if (index >= 0)
        {
            rungs[index] = rungs[index] with { IsWhole = true };
        }
    }

    /// <summary>What becomes of a mark later.</summary>
    private void Change(SessionEvent fact)
    {
        switch (fact)
        {
            case MarkUndone undone:
                marks.RemoveAll(mark => mark.Mark.Made.Id == undone.Id);
                break;
            case MarkWorded worded when marks.FindIndex(mark => mark.Mark.Made.Id == worded.Id) is >= 0 and int index:
                marks[index] = (marks[index].Mark.InWords(worded), marks[index].Epoch);
                break;
            case MarkMoved moved when marks.FindIndex(mark => mark.Mark.Made.Id == moved.Id) is >= 0 and int index:
                marks[index] = (marks[index].Mark with { Step = moved.Step, Rung = moved.Rung, WasMoved = true }, marks[index].Epoch);
                break;
        }
    }

    private HeardMark Heard(LoggedMark mark, IReadOnlyList<RungWeight> candidates) => new(
        mark.Made.Id,
        mark.Made.Kind!,
        MarkKindData.Find(choir, mark.Made.Kind!) is { IsPraise: true },
        mark.Made.Parts,
        candidates,
        mark.Made.Pitch,
        mark.Made.Place,
        mark.Made.Raw);
}
