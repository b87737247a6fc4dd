using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tui.Screens;

/// <summary>A line that asks for the one thing an action needs. It takes the letters while it is open. A value: each method returns the next one.</summary>
public sealed record PromptLine(PromptKind Kind, string Text)
{
    /// <summary>As many exercises are found, each with a digit to take it by.</summary>
    public const int MostFound = 5;

    /// <summary>True when it looks for an exercise.</summary>
    public bool IsSearch => Kind is PromptKind.InsertNext or PromptKind.InsertNow;

    /// <summary>When it was opened: what was played before is no answer.</summary>
    public Moment Opened { get; init; }

    /// <summary>The action that a prompt serves.</summary>
    public static PromptKind? For(LiveAction action) => action switch
    {
        LiveAction.JumpToKey => PromptKind.Key,
        LiveAction.ChooseParts => PromptKind.Parts,
        LiveAction.SwapOctave => PromptKind.Octave,
        LiveAction.Accompany => PromptKind.Piano,
        LiveAction.InsertNext => PromptKind.InsertNext,
        LiveAction.InsertNow => PromptKind.InsertNow,
        _ => null,
    };

    /// <summary>What was told before stands in it, to be changed.</summary>
    public static PromptLine ForTonight(LiveSession session) =>
        new(PromptKind.Tonight, TonightText.Write(session.Warmup.Tonight, session.Warmup.UsualChoir));

    /// <summary>The piece that was named last stands in it.</summary>
    public static PromptLine ForRehearsal(LiveSession session) =>
        new(PromptKind.Rehearsal, session.RehearsalMarks is [.., { Piece.Length: > 0 } last] ? last.Piece + " " : "");

    /// <summary>Adds what was typed.</summary>
    public PromptLine Type(string typed) => this with { Text = string.Concat(CellText.Split(Text + typed.ReplaceLineEndings(" ")).Take(MarkLine.MostCharacters)) };

    /// <summary>Takes the last character back; null when there was none.</summary>
    public PromptLine? Erase() => Text.Length == 0 ? null : this with { Text = string.Concat(CellText.Split(Text).SkipLast(1)) };

    /// <summary>What it asks the session for, or null when it was not understood.</summary>
    public IReadOnlyList<LiveInput>? Inputs(LiveSession session) => Kind switch
    {
        PromptKind.Key => Tonic(session) is { } tonic ? [new LiveInput.JumpTo(tonic)] : null,
        PromptKind.InsertNext or PromptKind.InsertNow or PromptKind.Pedal => null,
        PromptKind.Tonight => TonightText.Read(Text, session.Warmup.UsualChoir) is { } tonight ? [new LiveInput.TellTonight(tonight, Text)] : null,
        PromptKind.Rehearsal => Text.Trim().Length > 0 ? [new LiveInput.RehearsalKept(Text)] : [],
        PromptKind.Piano => PianoData.Find(Text.Trim()) is { } style ? [new LiveInput.Accompany(style)] : null,
        PromptKind.Parts => TypedParts.Find(Text, session.Warmup.Choir) is { } parts ? [new LiveInput.Sing(parts)] : null,
        _ => Swapped(session.Warmup.Choir) is { Count: > 0 } parts ? [.. parts.Select(part => new LiveInput.SwapOctave(part))] : null,
    };

    private IReadOnlyList<string>? Swapped(Choir choir) =>
        TypedParts.Find(Text, choir) is { } parts && parts.Count == 0 ? [.. choir.Parts.Select(part => part.Id)] : TypedParts.Find(Text, choir);

    /// <summary>A key that is played names its tonic; the nearest octave is meant, as with a name.</summary>
    public static Pitch Played(int midi, LiveSession session) => Nearest(KeySpelling.TonicFor(midi, session.Step?.Exercise.Mode ?? Mode.Major), session);

    private static Pitch Nearest(Pitch name, LiveSession session)
    {
        int present = session.Rung?.Tonic.Midi ?? Pitch.MiddleC.Midi;
        return name.Octaves((int)Math.Round((present - name.Midi) / 12.0));
    }

    /// <summary>A name alone means the nearest such key.</summary>
    private Pitch? Tonic(LiveSession session)
    {
        NoteNaming notes = session.Warmup.Choir.Notes;
        if (notes.TryParseName(Text, out Pitch name))
        {
            return Nearest(name, session);
        }

        return notes.TryParse(Text, out Pitch pitch) ? pitch : null;
    }
}
