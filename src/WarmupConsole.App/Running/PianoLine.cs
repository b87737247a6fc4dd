using WarmupConsole.Midi.Listening;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;

namespace WarmupConsole.App.Running;

/// <summary>A line that is heard from a piano, or played on it.</summary>
internal sealed class PianoLine(Composition composition, NoteNaming notes) : IDisposable
{
    private NoteListener? _listener;

    internal NoteNaming Notes => notes;

    internal bool IsOpen => _listener is not null;

    /// <summary>Begins to listen; what it listens to, or why not.</summary>
    internal string Open(PortChoice choice)
    {
        InputOpening opening = composition.Listen(choice);
        if (opening.Input is { } input)
        {
            _listener = new(input, composition.Clock);
            _listener.Start();
        }

        return opening.Sentence;
    }

    /// <summary>Ends listening; what was played.</summary>
    internal IReadOnlyList<PlayedNote> Finish()
    {
        IReadOnlyList<PlayedNote> played = _listener?.Finish() ?? [];
        _listener = null;
        return played;
    }

    /// <summary>Plays an exercise once from middle C; what it is played on, or why not.</summary>
    internal string Play(Exercise exercise, PortChoice choice)
    {
        using IPlayer player = composition.StartPlayer(PlayerFiles.None);
        PlayerReport? opening = PianoOpening.Open(player, choice);
        if (opening?.Kind == PlayerReportKind.PortOpened)
        {
            NotesPlaying.Through(player, composition, exercise.Tempo.Default, LineNotes.Of(exercise, Pitch.MiddleC));
        }

        return opening?.Sentence ?? AppTexts.NothingSounds;
    }

    public void Dispose() => _listener?.Dispose();
}
