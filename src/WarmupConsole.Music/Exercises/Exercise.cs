using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Exercises;

/// <summary>Something to do in a warm-up. Sung exercises have a pattern, body and breathing exercises have phases; never both.</summary>
public sealed record Exercise
{
    /// <summary>The canonical id: lower-case words joined by hyphens.</summary>
    public required string Id { get; init; }

    /// <summary>As it is shown.</summary>
    public required string Title { get; init; }

    /// <summary>The kind of work, which gives its place in a warm-up.</summary>
    public required Stage Stage { get; init; }

    /// <summary>The line to sing, or null for body and breathing. It lasts as long as one repetition does.</summary>
    public Pattern? Pattern { get; init; }

    /// <summary>Lines of their own for some parts; everyone else sings <see cref="Pattern"/>. Usually empty, and never longer than the pattern.</summary>
    public IReadOnlyList<VoiceLine> Voices { get; init; } = [];

    /// <summary>The scale that its degrees refer to.</summary>
    public Mode Mode { get; init; } = Mode.Major;

    /// <summary>How quick it is led.</summary>
    public required TempoRange Tempo { get; init; }

    /// <summary>The tempo of its last key where a plan says no tempo; null for the same throughout. Sung exercises only.</summary>
    public Tempo? LastTempo { get; init; }

    /// <summary>The keys it is led through where a plan says nothing about keys; null as usual. A drill out of a score has its own.</summary>
    public LadderSpec? Keys { get; init; }

    /// <summary>Loudness words spread evenly over the pattern: one ("mp") or a course ("p", "f", "p"); never empty.</summary>
    public IReadOnlyList<string> Dynamics { get; init; } = ["mf"];

    /// <summary>How its notes are joined.</summary>
    public Articulation Articulation { get; init; } = Articulation.Legato;

    /// <summary>What it trains; may be empty.</summary>
    public IReadOnlyList<Purpose> Purposes { get; init; } = [];

    /// <summary>Counted phases of one round; empty for sung exercises.</summary>
    public IReadOnlyList<BreathPhase> Phases { get; init; } = [];

    /// <summary>How many rounds of the phases are usual; 1–20.</summary>
    public int Rounds { get; init; } = 1;

    /// <summary>The accompaniment's chords over the pattern; empty when none was given (the tonic then holds).</summary>
    public IReadOnlyList<HarmonyChord> Harmony { get; init; } = [];

    /// <summary>What it asks of the piano, where plan and step say nothing.</summary>
    public PianoWish Piano { get; init; } = PianoWish.None;

    /// <summary>One or two sentences to the singers.</summary>
    public string Instruction { get; init; } = "";

    /// <summary>What the director listens for.</summary>
    public string Listen { get; init; } = "";

    /// <summary>A caution, where one is due; else empty.</summary>
    public string Caution { get; init; } = "";

    /// <summary>Seconds of talk before it when the choir knows it.</summary>
    public int TalkSeconds { get; init; } = 15;

    /// <summary>True when it is led through keys (it has a pattern), false when it runs in counted phases.</summary>
    public bool IsSung => Pattern is not null;

    /// <summary>All lines, that of everyone else first; none for body and breathing.</summary>
    public IEnumerable<Pattern> Lines => Pattern is null ? [] : Voices.Select(voice => voice.Placed).Prepend(Pattern);

    /// <summary>What a part sings, with the rest before a later entry: the first line that names it, or the pattern.</summary>
    public Pattern? PatternFor(Part part) => Voices.FirstOrDefault(voice => voice.IsFor(part))?.Placed ?? Pattern;
}
