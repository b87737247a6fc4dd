namespace WarmupConsole.Tests.Storage;

/// <summary>Whole and correct files, for tests to bend.</summary>
internal static class Samples
{
    internal const string Choir = """
        format: 1
        name: The Lantern Quay Singers
        town: Saltmarsh Ferry
        demo: false
        rehearsal: 120
        parts:
          - id: soprano
            name: Soprano
            letters: [s, sop]
            groups: [women, upper]
            singers: 14
            placement: 0
            extreme: C4-G5
            comfortable: C4-F5
          - id: bass
            groups: [men]
            singers: 9
            placement: -1
            extreme: E2-E4
            comfortable: G2-C4
        concerts:
          - {date: 2027-05-22, title: Spring concert}
        marks:
          - {id: swallowed, words: swallowed tone, spellings: [Swallowing], praise: false}

        """;

    internal const string Exercises = """
        format: 1
        exercises:
          - id: five-note-scale
            title: Five-note scale
            stage: sung
            mode: major
            pattern: "1:1/2 2:1/2 3:1/2 4:1/2 5 4:1/2 3:1/2 2:1/2 1:3/2 -:1"
            syllables: "noo/u ~ ~ ~ ~ ~ ~ ~ ~"
            tempo: {default: 88, from: 66, to: 108}
            dynamics: [p, mf, p]
            articulation: legato
            purposes: [tuning.scale, touch.legato]
            harmony: "I:3 V7:2 I:2"
            instruction: One even line; let the vowel stay where it began.
            listen: Is the third on the way down as high as on the way up?
            talk: 20
          - id: counted-breath
            title: Counted breath
            stage: breathing
            tempo: {default: 60, from: 50, to: 72}
            phases:
              - {do: in, counts: 4, say: low and quiet}
              - {do: hold, counts: 2}
              - {do: out, counts: 8, say: on ss}
              - {do: rest, counts: 2}
            rounds: 4
            purposes: [time.sustained]

        """;

    internal const string InParts = """
        format: 1
        exercises:
          - id: canon-over-a-drone
            title: Canon over a drone
            stage: sung
            pattern: "1 2 3 4 5:4 -:2"
            syllables: "loo/u ~ ~ ~ lah/ɑ"
            voices:
              - {parts: [men, alto], pattern: "1 2 3 4 5:4", syllables: "loo/u", offset: 2}
              - {parts: bass, pattern: "1:10"}
            tempo: {default: 92, from: 72, to: 108}

        """;

    internal const string Plan = """
        format: 1
        date: 2027-02-16
        title: A calm quarter of an hour
        minutes: 15
        advance: rolling
        steps:
          - exercise: counted-breath
            talk: 20
            tempo: 60
            rounds: 3
            because: [attention before sound]
          - exercise: five-note-scale
            breath: 2
            keys:
              start: C4
              shape: up-and-back
              limit: everyone
              reach: 0
              tolerance: 2
              most: 6
            because: [altos flat in E last week, this climbs to E from below]

        """;

    /// <summary>The sample with its first occurrence of the right text made wrong.</summary>
    internal static string Bend(string sample, string right, string wrong)
    {
        int at = sample.IndexOf(right, StringComparison.Ordinal);
        Assert.True(at >= 0);
        return sample[..at] + wrong + sample[(at + right.Length)..];
    }

    /// <summary>The place of the fault within what was put in, or, where that lacks it, in the whole source.</summary>
    internal static string InContext(string source, string wrong, string at)
    {
        int within = wrong.LastIndexOf(at, StringComparison.Ordinal);
        return within < 0 || !source.Contains(wrong, StringComparison.Ordinal) ? at : wrong.Insert(within, "^");
    }
}
