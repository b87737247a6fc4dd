using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Repertoire.Places;

/// <summary>When the bars of a score sound, in seconds from its beginning: as they stand, or in the order in which they are played.</summary>
public sealed class ScoreClock
{
    /// <summary>Where a score names no tempo: a walking pace (andante begins at 76 by most tables).</summary>
    public const int UsualBeatsPerMinute = 80;

    /// <summary>More changes of tempo in one bar no choir could follow.</summary>
    private const int MostChanges = 64;

    private readonly ILookup<int, TempoChange> changes;
    private readonly ILookup<int, int> places;
    private readonly Tempo[] atBar;
    private readonly double[] seconds;
    private readonly long[] ticks;

    private ScoreClock(Score score, IReadOnlyList<int> order)
    {
        (Order, HasTempo) = (order, score.Tempos.Count > 0);
        changes = score.Tempos.ToLookup(change => change.Bar);
        places = Enumerable.Range(0, order.Count).ToLookup(place => order[place]);
        atBar = AtBars(score);
        (seconds, ticks) = (new double[order.Count], new long[order.Count]);
        for (int place = 1; place < order.Count; place++)
        {
            Beats length = score.Bars[order[place - 1]].Length;
            seconds[place] = seconds[place - 1] + Within(order[place - 1], length);
            ticks[place] = ticks[place - 1] + length.Ticks;
        }
    }

    /// <summary>Indices of bars in the order that is reckoned with; a place in it may come again as another place.</summary>
    public IReadOnlyList<int> Order { get; }

    /// <summary>False when the score names no tempo and <see cref="UsualBeatsPerMinute"/> is taken.</summary>
    public bool HasTempo { get; }

    /// <summary>The clock of a score.</summary>
    /// <param name="score">The score.</param>
    /// <param name="asPlayed">With repeats, endings and leaps; else each bar once.</param>
    public static ScoreClock Of(Score score, bool asPlayed = false)
    {
        ArgumentNullException.ThrowIfNull(score);
        return new(score, asPlayed ? PlayedOrder.Of(score.Bars) : [.. Enumerable.Range(0, score.Bars.Count)]);
    }

    /// <summary>Where in that order a bar comes.</summary>
    public IEnumerable<int> PlacesOf(int bar) => places[bar];

    /// <summary>Seconds from the beginning to a moment in a bar.</summary>
    public double SecondsAt(int place, Beats offset) => seconds[place] + Within(Order[place], offset);

    /// <summary>Beats from the beginning to a moment in a bar.</summary>
    public Beats BeatsAt(int place, Beats offset) => new(ticks[place] + offset.Ticks);

    /// <summary>Notes as often as their bars come.</summary>
    internal IEnumerable<PartNote> AsSung(IEnumerable<PartNote> notes) => notes.SelectMany(note => Enumerable.Repeat(note, places[note.Bar].Count()));

    private static Tempo[] AtBars(Score score)
    {
        Tempo now = score.Tempos.Count > 0 ? score.Tempos[0].Tempo : Tempo.FromBeatsPerMinute(UsualBeatsPerMinute);
        Tempo[] at = new Tempo[score.Bars.Count];
        int next = 0;
        for (int bar = 0; bar < at.Length; bar++)
        {
            at[bar] = now;
            for (; next < score.Tempos.Count && score.Tempos[next].Bar <= bar; next++)
            {
                now = score.Tempos[next].Tempo;
            }
        }

        return at;
    }

    /// <summary>Seconds from the beginning of a bar.</summary>
    private double Within(int bar, Beats offset)
    {
        (Tempo now, Beats from, double passed) = (atBar[bar], Beats.Zero, 0);
        foreach (TempoChange change in changes[bar].Take(MostChanges).TakeWhile(change => change.Offset < offset))
        {
            passed += Seconds(now, change.Offset - from);
            (now, from) = (change.Tempo, change.Offset);
        }

        return passed + Seconds(now, offset - from);
    }

    private static double Seconds(Tempo tempo, Beats beats) => beats.ToDouble() * 60 / tempo.BeatsPerMinute;
}
