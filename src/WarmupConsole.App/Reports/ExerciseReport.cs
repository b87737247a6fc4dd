using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.App.Reports;

/// <summary>One exercise with the fields that its file has, and what it asks of the voice; what only sung or only counted ones have is null or empty for the others.</summary>
internal sealed record ExerciseReport
{
    /// <summary>As plans name it.</summary>
    public required string Id { get; init; }

    public required string Title { get; init; }

    public required string Stage { get; init; }

    public required IReadOnlyList<string> Purposes { get; init; }

    public required Bpm Tempo { get; init; }

    public string? Mode { get; init; }

    /// <summary>The line of everyone who has none of their own.</summary>
    public string? Pattern { get; init; }

    public string? Syllables { get; init; }

    public IReadOnlyList<Voice> Voices { get; init; } = [];

    public string? Harmony { get; init; }

    public IReadOnlyList<string> Dynamics { get; init; } = [];

    public string? Articulation { get; init; }

    /// <summary>The keys it has where a plan says nothing about keys; null as usual.</summary>
    public OwnKeys? Keys { get; init; }

    public IReadOnlyList<Phase> Phases { get; init; } = [];

    public int? Rounds { get; init; }

    public required string Instruction { get; init; }

    public required string Listen { get; init; }

    public required string Caution { get; init; }

    /// <summary>Seconds before it when the choir knows it.</summary>
    public required int Talk { get; init; }

    /// <summary>What it asks of the voice; null for body and breathing.</summary>
    public ExerciseNumbers? Demands { get; init; }

    internal static ExerciseReport From(Exercise exercise)
    {
        (Tempo usual, Tempo from, Tempo to) = exercise.Tempo;
        ExerciseReport common = new()
        {
            Id = exercise.Id,
            Title = exercise.Title,
            Stage = StageData.Id(exercise.Stage),
            Purposes = [.. exercise.Purposes.Select(PurposeData.Id)],
            Tempo = new(usual.BeatsPerMinute, from.BeatsPerMinute, to.BeatsPerMinute, exercise.LastTempo?.BeatsPerMinute),
            Instruction = exercise.Instruction,
            Listen = exercise.Listen,
            Caution = exercise.Caution,
            Talk = exercise.TalkSeconds,
            Demands = ExerciseNumbers.Of(exercise),
        };
        return exercise.Pattern is { } pattern ? Sung(common, exercise, pattern) : common with
        {
            Phases = [.. exercise.Phases.Select(phase => new Phase(Word(phase.Action), phase.Counts, phase.Say))],
            Rounds = exercise.Rounds,
        };
    }

    private static ExerciseReport Sung(ExerciseReport common, Exercise exercise, Pattern pattern) => common with
    {
        Mode = ModeData.Id(exercise.Mode),
        Pattern = PatternText.Write(pattern),
        Syllables = SyllableText.Write(pattern),
        Voices = [.. exercise.Voices.Select(voice => new Voice(voice.Parts, PatternText.Write(voice.Pattern), SyllableText.Write(voice.Pattern), voice.Offset.ToDouble()))],
        Harmony = HarmonyText.Write(exercise.Harmony),
        Dynamics = exercise.Dynamics,
        Articulation = Word(exercise.Articulation),
        Keys = exercise.Keys is { } keys
            ? new(keys.Start?.ToAscii(), ExercisesText.Shape(keys.Shape).Replace(' ', '-'), keys.Limit, keys.ReachPercent, keys.ToleranceSemitones, keys.StepSemitones, keys.TakesOctave, keys.MostKeys)
            : null,
    };

    private static string Word<T>(T value)
        where T : struct, Enum => Enum.GetName(value)!.ToLowerInvariant();

    /// <summary>Beats a minute: the usual tempo, the slowest and the quickest; in the last key, where it has one of its own.</summary>
    internal sealed record Bpm(double Default, double From, double To, double? Last);

    /// <summary>Keys of its own, as a drill has them.</summary>
    internal sealed record OwnKeys(string? Start, string Shape, string Limit, int Reach, int Tolerance, int By, bool Octave, int? Most);

    /// <param name="Parts">Who sings it: parts or groups.</param>
    /// <param name="Pattern">Their line.</param>
    /// <param name="Syllables">What is sung on it.</param>
    /// <param name="Offset">Beats that they come in later.</param>
    internal sealed record Voice(IReadOnlyList<string> Parts, string Pattern, string Syllables, double Offset);

    /// <param name="Do">in, hold, out, rest or move.</param>
    /// <param name="Counts">Beats.</param>
    /// <param name="Say">What is said with it.</param>
    internal sealed record Phase(string Do, int Counts, string Say);
}
