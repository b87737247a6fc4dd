using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Tests.Sessions.Findings.Seasons;

/// <summary>
/// Makes the logs of a season from a seed. It shares nothing with the estimate but the shape of a log: faults happen at notes, not in
/// rungs; the director is inattentive for stretches, late, mistaken about part, kind and pitch, too busy to type twice at once, and has habits.
/// </summary>
internal sealed class SeasonSimulator
{
    private const double LapseBegins = 0.04;
    private const double LapseEnds = 0.30;
    private const double WrongPart = 0.04;
    private const double WrongKind = 0.04;
    private const double VeryLate = 0.12;
    private const double TypingSeconds = 1.5;

    private static readonly string[] Kinds = ["flat", "flat", "flat", "flat", "sharp", "late", "uneven", "breathy", "strained"];

    private static readonly (string Id, int Low, int High, int Octave, int EasyLow, int EasyHigh)[] Parts =
    [
        ("soprano", 60, 79, 0, 62, 77),
        ("alto", 55, 74, 0, 59, 72),
        ("tenor", 48, 69, -12, 50, 65),
        ("bass", 41, 62, -12, 45, 60),
    ];

    private static readonly string[] Names = ["C", "Db", "D", "Eb", "E", "F", "Gb", "G", "Ab", "A", "Bb", "B"];

    private readonly SeasonSpec spec;
    private readonly Random random;
    private readonly (double NamesKey, double NamesPitch, double MovesBack) habit;

    private readonly HashSet<(string Part, int Midi)> asked = [];

    // Of one evening.
    private List<(double At, SessionEvent Event)> events = [];
    private List<(double Start, int Step, int Rung, int Tonic)> sung = [];
    private List<(double At, string Part, string Kind, int Rung, int Midi)> faults = [];
    private bool lapse;

    private SeasonSimulator(SeasonSpec spec)
    {
        this.spec = spec;
        random = new(spec.Seed);
        habit = random.Next(3) switch { 0 => (0.0, 0.0, 0.0), 1 => (0.5, 0.05, 0.1), _ => (0.1, 0.4, 0.5) };
    }

    internal static Season Make(SeasonSpec spec)
    {
        SeasonSimulator simulator = new(spec);
        Weakness[] hidden = simulator.Hide();
        return new([.. Enumerable.Range(0, spec.Sessions).Select(evening => simulator.Evening(evening, hidden))], [.. hidden.Where(simulator.Was)]);
    }

    /// <summary>Nothing can be hidden where nothing was sung.</summary>
    private bool Was(Weakness weak) => asked.Contains((weak.Part, weak.Midi));

    private Weakness[] Hide()
    {
        double marked = spec.WeakRate * LapseEnds / (LapseEnds + LapseBegins) * (1 - WrongPart) * (1 - WrongKind);
        Dictionary<(string, int), Weakness> hidden = [];
        while (hidden.Count < spec.Weaknesses)
        {
            var part = Parts[random.Next(Parts.Length)];
            int midi = random.Next(part.EasyLow, part.EasyHigh + 1);
            bool isNear = hidden.Keys.Any(other => other.Item1 == part.Id && Math.Abs(other.Item2 - midi) < 3);
            if (!isNear)
            {
                hidden[(part.Id, midi)] = new(part.Id, midi, random.Next(4) == 0 ? "strained" : "flat", marked);
            }
        }

        return [.. hidden.Values];
    }

    private List<SessionRecord> Evening(int evening, Weakness[] hidden)
    {
        (events, sung, faults, lapse) = ([], [], [], false);
        double now = 0;
        int[] chosen = [.. Enumerable.Range(0, SeasonPatterns.Rows.Length)];
        random.Shuffle(chosen);
        for (int step = 0; step < 9; step++)
        {
            now = Ladder(step, chosen[step], now + 15 + random.Next(30), hidden);
        }

        Mark();
        DateTimeOffset start = new DateTimeOffset(2027, 1, 12, 19, 30, 0, TimeSpan.Zero).AddDays(7 * evening);
        RunStarted first = new("0.1.0", "The Net Loft Singers", "", SeasonChoir.Yaml, "", SeasonPatterns.Yaml);
        return
        [
            .. events.OrderBy(happened => happened.At).Prepend((At: 0, Event: first)).Append((At: now + 60, Event: new RunEnded("finished")))
                .Select((happened, i) => new SessionRecord(i + 1, start.AddSeconds(happened.At), 1, Moment(happened.At), happened.Event)),
        ];
    }

    private double Ladder(int step, int pattern, double now, Weakness[] hidden)
    {
        (string id, _, int[] semitones, double beats, int bpm, _) = SeasonPatterns.Rows[pattern];
        int first = 58 + random.Next(6);
        int top = first + 3 + random.Next(6);
        int[] keys = [.. Enumerable.Range(first, top - first + 1), .. random.Next(3) == 0 ? [] : Enumerable.Range(first, top - first).Reverse()];
        events.Add((now, new StepStarted(step, id, keys)));
        now += 8;
        double beat = 60.0 / (bpm + random.Next(-4, 5));
        foreach ((int rung, int tonic) in keys.Index())
        {
            Sing(hidden, (step, rung, tonic), (now, beats * beat, (int)(60_000 / beat)), semitones);
            now += semitones.Length * beats * beat;
            events.Add((now, new RungEnded(step, rung, true)));
            now += 2 * beat;
        }

        return now;
    }

    private void Sing(Weakness[] hidden, (int Step, int Rung, int Tonic) where, (double Start, double Note, int MilliBpm) time, int[] semitones)
    {
        (int low, int high) = (where.Tonic + semitones.Min(), where.Tonic + semitones.Max());
        var singing = Parts.Where(part => part.Low <= low + part.Octave && high + part.Octave <= part.High).ToArray();
        events.Add((time.Start, new RungStarted(
            where.Step, where.Rung, Name(where.Tonic), where.Tonic, time.MilliBpm,
            [.. singing.Select(part => part.Id)],
            [.. singing.Select(part => low + part.Octave)],
            [.. singing.Select(part => high + part.Octave)])));
        sung.Add((time.Start, where.Step, where.Rung, where.Tonic));
        lapse = lapse ? random.NextDouble() >= LapseEnds : random.NextDouble() < LapseBegins;
        foreach (var part in singing)
        {
            int[] notes = [.. semitones.Select(semitone => where.Tonic + semitone + part.Octave)];
            asked.UnionWith(notes.Select(midi => (part.Id, midi)));
            foreach (Weakness weak in hidden.Where(weak => weak.Part == part.Id && notes.Contains(weak.Midi) && random.NextDouble() < spec.WeakRate))
            {
                Hear((time.Start + (time.Note * (Array.IndexOf(notes, weak.Midi) + 1)), part.Id, weak.Kind, sung.Count - 1, weak.Midi));
            }

            if (random.NextDouble() < spec.BaseRate)
            {
                int note = random.Next(notes.Length);
                Hear((time.Start + (time.Note * (note + 1)), part.Id, Kinds[random.Next(Kinds.Length)], sung.Count - 1, notes[note]));
            }
        }
    }

    private void Hear((double At, string Part, string Kind, int Rung, int Midi) fault)
    {
        if (!lapse)
        {
            faults.Add(fault);
        }
    }

    /// <summary>What was heard is typed one after another, after its lag.</summary>
    private void Mark()
    {
        double free = 0;
        int id = 1;
        foreach (var fault in faults.OrderBy(fault => fault.At))
        {
            double lag = random.NextDouble() < VeryLate ? 4 + (4 * random.NextDouble()) : 2 + (2 * random.NextDouble());
            double typed = Math.Max(free, fault.At + lag);
            free = typed + TypingSeconds;
            Type(id++, typed, fault);
        }
    }

    private void Type(int id, double typed, (double At, string Part, string Kind, int Rung, int Midi) fault)
    {
        string part = random.NextDouble() < WrongPart ? Parts[random.Next(Parts.Length)].Id : fault.Part;
        string kind = random.NextDouble() < WrongKind ? Kinds[random.Next(Kinds.Length)] : fault.Kind;
        int shown = sung.FindLastIndex(rung => rung.Start <= typed);
        bool namesKey = random.NextDouble() < habit.NamesKey;
        int? pitch = random.NextDouble() < habit.NamesPitch ? fault.Midi + (random.NextDouble() < 0.85 ? 0 : random.Next(-2, 3)) : null;
        events.Add((typed + TypingSeconds, new MarkMade(
            id, sung[shown].Step, sung[shown].Rung, $"{part} {kind}", [part], kind,
            Name(sung[namesKey ? fault.Rung : shown].Tonic), namesKey, pitch, "", Moment(typed).Nanoseconds)));
        if (!namesKey && pitch is null && shown != fault.Rung && random.NextDouble() < habit.MovesBack)
        {
            events.Add((typed + TypingSeconds + 1, new MarkMoved(id, sung[fault.Rung].Step, sung[fault.Rung].Rung)));
        }
    }

    private static Moment Moment(double seconds) => new((long)(seconds * 1e9));

    private static string Name(int midi) => Names[midi % 12] + ((midi / 12) - 1);
}
