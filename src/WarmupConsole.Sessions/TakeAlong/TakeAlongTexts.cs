using System.Globalization;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Sessions.TakeAlong;

/// <summary>What stands in the files that are taken along.</summary>
public static class TakeAlongTexts
{
    /// <summary>The piano's name among the parts.</summary>
    public const string Piano = "Piano";

    /// <summary>Above the voice-care card.</summary>
    public const string CareTitle = "Take care of your voice";

    /// <summary>For whoever sings alone; the sources stand in docs/cautions.md.</summary>
    public static IReadOnlyList<string> Care { get; } =
    [
        "Start quietly and push for no note: a key that is not easy today is left out.",
        "Stop when it hurts, scratches or makes you hoarse.",
        "Dizzy? Breathe normally and sit down. Breath holds stay short.",
        "With a cold or a sore throat rest the voice; sip water instead of clearing the throat.",
        "Hoarse for more than about three weeks: see a doctor.",
        "This is no medical advice; the judgement of a licensed professional comes first.",
    ];

    /// <summary>"The Lantern Quay Singers: A quarter of an hour, 2027-02-09".</summary>
    public static string Title(Warmup warmup)
    {
        ArgumentNullException.ThrowIfNull(warmup);
        string day = warmup.Plan.Date is { } date ? string.Create(CultureInfo.InvariantCulture, $"{date:yyyy-MM-dd}") : "";
        string plan = string.Join(", ", new[] { warmup.Plan.Title, day }.Where(word => word.Length > 0));
        return plan.Length == 0 ? warmup.Choir.Name : $"{warmup.Choir.Name}: {plan}";
    }

    /// <summary>"4. Falling hum".</summary>
    public static string Step(int index, WarmupStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return string.Create(CultureInfo.InvariantCulture, $"{index + 1}. {step.Exercise.Title}");
    }

    /// <summary>"4. Falling hum in Db major"; signs as letters, for programs that read plain text only.</summary>
    public static string Rung(int index, WarmupStep step, Rung rung, NoteNaming notes)
    {
        ArgumentNullException.ThrowIfNull(rung);
        return Plain($"{Step(index, step)} in {Key(rung, notes)}");
    }

    /// <summary>"D♭ major".</summary>
    public static string Key(Rung rung, NoteNaming notes)
    {
        ArgumentNullException.ThrowIfNull(rung);
        ArgumentNullException.ThrowIfNull(notes);
        return $"{notes.WriteName(rung.Tonic)} {ModeData.Words(rung.Mode)}";
    }

    /// <summary>"in 4", "hold 2", "out 8, on ss".</summary>
    public static string Phase(BreathPhase phase)
    {
        ArgumentNullException.ThrowIfNull(phase);
        string counted = string.Create(CultureInfo.InvariantCulture, $"{phase.Action.ToString().ToLowerInvariant()} {phase.Counts}");
        return phase.Say.Length == 0 ? counted : $"{counted}, {phase.Say}";
    }

    /// <summary>All phases and how often: "in 4, on ss; out 8; 3 rounds".</summary>
    public static string Phases(WarmupStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return string.Join("; ", [.. step.Exercise.Phases.Select(Phase), Rounds(step)]);
    }

    /// <summary>"3 rounds".</summary>
    public static string Rounds(WarmupStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step.Rounds == 1 ? "once" : string.Create(CultureInfo.InvariantCulture, $"{step.Rounds} rounds");
    }

    /// <summary>The names of the keys in order, the way back in two words: "C D♭ D and back".</summary>
    public static string Keys(IReadOnlyList<Rung> rungs, NoteNaming notes)
    {
        ArgumentNullException.ThrowIfNull(rungs);
        ArgumentNullException.ThrowIfNull(notes);
        int turn = TurningPoint(rungs);
        string names = string.Join(' ', rungs.Take(turn < 0 ? rungs.Count : turn + 1).Select(rung => notes.WriteName(rung.Tonic)));
        return turn < 0 ? names : $"{names} and back";
    }

    /// <summary>"84", or "84 to 96" where it changes from key to key.</summary>
    public static string Tempos(WarmupStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        KeyTempos tempos = step.Tempos;
        return tempos.First == tempos.Last ? Number(tempos.First) : $"{Number(tempos.First)} to {Number(tempos.Last)}";
    }

    /// <summary>Signs as letters.</summary>
    public static string Plain(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Replace('♭', 'b').Replace('♯', '#');
    }

    private static string Number(Tempo tempo) => tempo.BeatsPerMinute.ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>Where the second half is the first one backwards; −1 where it is not.</summary>
    private static int TurningPoint(IReadOnlyList<Rung> rungs)
    {
        int middle = rungs.Count / 2;
        bool isMirrored = rungs.Count > 2 && rungs.Count % 2 == 1
            && Enumerable.Range(0, middle).All(index => rungs[index].Tonic.Midi == rungs[rungs.Count - 1 - index].Tonic.Midi);
        return isMirrored ? middle : -1;
    }
}
