using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Tests.Scenarios;

/// <summary>
/// An evening of the demo's past, led by the live machine in virtual time by a simulated director, from a seed. Hidden in it: the altos
/// sag on A4 four times in ten, and above their comfortable top every part but the tenors is often in trouble.
/// </summary>
internal sealed class DemoEvening
{
    private const int Weak = 69;
    private const double WeakRate = 0.4;
    private const double BeyondRate = 0.35;
    private const double BaseRate = 0.015;

    private static readonly string[] Small = ["uneven", "late", "breathy", "good", "dark"];

    private readonly Random random;
    private readonly Choir choir;
    private readonly List<(Moment At, string Text)> pending = [];
    private readonly List<(Moment At, SessionEvent Event)> events = [];
    private LiveOutcome outcome;
    private Moment now;

    private DemoEvening(Warmup warmup, int seed)
    {
        (random, choir) = (new(seed), warmup.Choir);
        outcome = LiveMachine.Start(warmup, now);
    }

    /// <summary>Everything that a log of the evening holds after its first record.</summary>
    internal static IReadOnlyList<(Moment At, SessionEvent Event)> Lead(Warmup warmup, int seed)
    {
        DemoEvening evening = new(warmup, seed);
        while (evening.outcome.Session.State != LiveState.Finished)
        {
            evening.GoOn();
        }

        return evening.events;
    }

    private void GoOn()
    {
        LiveSession session = outcome.Session;
        bool waits = session.State is LiveState.Ready or LiveState.Introduce or LiveState.Wait;
        Moment next = waits ? now + TimeSpan.FromSeconds(session.State == LiveState.Introduce ? session.Step!.TalkSeconds : 2) : session.NextWake!.Value;
        if (pending.Count > 0 && pending[0].At <= next)
        {
            (Moment at, string text) = pending[0];
            now = at > now ? at : now;
            pending.RemoveAt(0);
            Take(new LiveInput.MarkKept(text, session.AnchorAt(now)));
            return;
        }

        now = next;
        Take(waits ? new LiveInput.Act(LiveAction.GoOn) : new LiveInput.TimePassed());
    }

    private void Take(LiveInput input)
    {
        outcome = LiveMachine.Handle(outcome.Session, input, now);
        foreach (SessionEvent fact in outcome.Effects.OfType<LiveEffect.Record>().Select(effect => effect.Event))
        {
            events.Add((now, fact));
            if (fact is RungStarted rung)
            {
                Listen(rung);
            }
        }
    }

    /// <summary>What goes wrong in a rung is typed two to four seconds after its middle.</summary>
    private void Listen(RungStarted rung)
    {
        foreach ((int index, string part) in rung.Sing.Index())
        {
            int high = choir.Parts.First(known => known.Id == part).Range.Comfortable.High.Midi;
            bool asksWeak = part == "alto" && outcome.Session.Step!.Exercise.Lines.Any(line => line.Notes.Any(note => note.Degree is { } degree
                && rung.Midi + WarmupConsole.Music.Scales.ModeData.IntervalOf(outcome.Session.Step.Exercise.Mode, degree).Semitones == Weak));
            string? heard = random.NextDouble() switch
            {
                < WeakRate when asksWeak => $"{part} flat",
                < BeyondRate when rung.High[index] > high && part != "tenor" => $"{part} strained",
                < BaseRate => $"{part} {Small[random.Next(Small.Length)]}",
                _ => null,
            };
            if (heard is not null)
            {
                double length = outcome.Session.Step!.Exercise.Pattern!.Length.ToDouble() * 60_000 / rung.MilliBpm;
                pending.Add((now + TimeSpan.FromSeconds((length / 2) + 2 + (2 * random.NextDouble())), heard));
            }
        }

        pending.Sort((a, b) => a.At.CompareTo(b.At));
    }
}
