using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Sessions.Live;

/// <summary>Everything that can happen to a running session.</summary>
public abstract record LiveInput
{
    private LiveInput()
    {
    }

    /// <summary>The director acted.</summary>
    public sealed record Act(LiveAction Action) : LiveInput;

    /// <summary>To this key, by its tonic as written for parts with placement 0.</summary>
    public sealed record JumpTo(Pitch Tonic) : LiveInput;

    /// <summary>Only these parts, by their ids; none for everyone.</summary>
    public sealed record Sing(IReadOnlyList<string> PartIds) : LiveInput;

    /// <summary>This part, by its id, in the other octave, or in its own again.</summary>
    public sealed record SwapOctave(string PartId) : LiveInput;

    /// <summary>The piano plays this while the choir sings.</summary>
    public sealed record Accompany(AccompanimentStyle Style) : LiveInput;

    /// <summary>Put in this step, now or next, and keep its exercise in the log as this text.</summary>
    public sealed record Insert(WarmupStep Step, string ExerciseYaml, bool Now) : LiveInput;

    /// <summary>What differs this evening, as it was understood and as it was typed.</summary>
    public sealed record TellTonight(Tonight Tonight, string Raw) : LiveInput;

    /// <summary>A mark from the rehearsal behind the warm-up, as it was typed: piece, bars, what was heard.</summary>
    public sealed record RehearsalKept(string Raw) : LiveInput;

    /// <summary>The moment asked for by <see cref="LiveSession.NextWake"/> has come (or any other: it does no harm).</summary>
    public sealed record TimePassed : LiveInput;

    /// <summary>A key of the piano was struck; it matters while the session follows.</summary>
    public sealed record NoteHeard(int Midi) : LiveInput;

    /// <summary>A mark was typed and kept; with the number of a pin, it puts that pin in words.</summary>
    public sealed record MarkKept(string Raw, MarkAnchor Anchor, int? Pin = null) : LiveInput;

    /// <summary>This moment is pinned, to be put in words later.</summary>
    public sealed record PinMoment : LiveInput;

    /// <summary>The newest mark is taken back.</summary>
    public sealed record UndoMark : LiveInput;

    /// <summary>The newest mark belongs one rung earlier.</summary>
    public sealed record MoveMarkBack : LiveInput;

    /// <summary>The log holds safely so many of the facts about marks that this run has recorded.</summary>
    public sealed record MarksFlushed(int Facts) : LiveInput;

    /// <summary>Something outside went wrong; music stops and the director is told.</summary>
    public sealed record Trouble(string Sentence) : LiveInput;

    /// <summary>Something outside is well again; the director is told.</summary>
    public sealed record News(string Sentence) : LiveInput;

    /// <summary>Something outside is not as it should be, such as a log that cannot be written; the director is told and the music goes on.</summary>
    public sealed record Warning(string Sentence) : LiveInput;
}
