using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Voices;

/// <summary>
/// The way to a part's ranges, note by note: from the middle of what was comfortable so far up by half-steps, first as far as
/// it is easy, then as far as it goes; then down in the same way. A value: every answer gives the next walk.
/// </summary>
public sealed record RangeWalk
{
    /// <summary>Nobody is taken further than this many semitones beyond the extreme that was known so far.</summary>
    public const int FarthestBeyondSemitones = 12;

    /// <summary>Begins in the middle of the comfortable range known so far.</summary>
    public RangeWalk(VoiceRange known)
    {
        ArgumentNullException.ThrowIfNull(known);
        Middle = Midi = (known.Comfortable.Low.Midi + known.Comfortable.High.Midi) / 2;
        Limits = new(known.Extreme.Low.Midi - FarthestBeyondSemitones, known.Extreme.High.Midi + FarthestBeyondSemitones);
        Easy = Utmost = new(Middle, Middle);
    }

    /// <summary>Which end is looked for.</summary>
    public RangeStage Stage { get; private init; }

    /// <summary>The MIDI number of the note to sing now.</summary>
    public int Midi { get; private init; }

    /// <summary>The walk before the last answer, or null at its beginning.</summary>
    public RangeWalk? Before { get; private init; }

    /// <summary>The note to sing now, in its commonest spelling.</summary>
    public Pitch Note => Spelled(Midi);

    /// <summary>What was found so far; all of it once the stage is <see cref="RangeStage.Done"/>.</summary>
    public VoiceRange Found => new(Utmost.Range, Easy.Range);

    private int Middle { get; }

    private Ends Limits { get; }

    private Ends Easy { get; init; }

    private Ends Utmost { get; init; }

    private bool IsUp => Stage is RangeStage.EasyUp or RangeStage.UtmostUp;

    private int Outwards => IsUp ? 1 : -1;

    /// <summary>The next walk. At the farthest note allowed, a good one is the last one. When done, nothing changes.</summary>
    public RangeWalk After(RangeAnswer answer)
    {
        if (Stage == RangeStage.Done)
        {
            return this;
        }

        bool isFarthest = Midi == (IsUp ? Limits.High : Limits.Low);
        return answer == RangeAnswer.StillGood && !isFarthest
            ? this with { Midi = Midi + Outwards, Before = this }
            : EndAt(answer == RangeAnswer.NotThisOne ? Midi - Outwards : Midi);
    }

    /// <summary>One end is found. It never lies beyond the middle, so that a first note that is not easy is an end all the same.</summary>
    private RangeWalk EndAt(int midi)
    {
        Ends utmost = Utmost.With(midi);
        bool isEasy = Stage is RangeStage.EasyUp or RangeStage.EasyDown;
        return this with
        {
            Stage = Stage + 1,
            Easy = isEasy ? Easy.With(midi) : Easy,
            Utmost = utmost,
            Midi = Stage == RangeStage.UtmostUp ? Middle : IsUp ? utmost.High + 1 : utmost.Low - 1,
            Before = this,
        };
    }

    private static Pitch Spelled(int midi) => KeySpelling.TonicFor(midi, Mode.Major);

    private readonly record struct Ends(int Low, int High)
    {
        internal PitchRange Range => new(Spelled(Low), Spelled(High));

        internal Ends With(int midi) => new(Math.Min(Low, midi), Math.Max(High, midi));
    }
}
