using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Editing;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Plans;
using WarmupConsole.Storage.Yaml;
using WarmupConsole.Tui.Planning;

namespace WarmupConsole.App.Running;

/// <summary>A plan on the planning screen: its file, its check, and a piano to hear it on.</summary>
internal sealed class PlanDesk : IPlanDesk, IDisposable
{
    private static readonly TimeSpan LeadTime = TimeSpan.FromMilliseconds(150);

    private readonly Lock _gate = new();
    private readonly Composition _composition;
    private readonly Content _content;
    private readonly PortChoice _port;
    private readonly IReadOnlyList<Plan> _earlier;
    private volatile string _sound = "";
    private IPlayer? _player;
    private long _generation;
    private string? _onDisk;

    internal PlanDesk(Composition composition, Content content, PortChoice port)
    {
        (_composition, _content, _port) = (composition, content, port);
        _earlier = EarlierPlans.Before(content.Folder, content.Plan).Plans;
        Start = PlanDraft.Of(content.Folder.Choir, content.Plan.Plan, content.Folder.Exercises.ToDictionary(exercise => exercise.Id));
        Path = content.Folder.EditedPathFor(content.Plan.Path, content.Plan.Plan.Date ?? composition.Today);
        _onDisk = File.Exists(Path) && System.IO.Path.GetFullPath(Path) == System.IO.Path.GetFullPath(content.Plan.Path) ? content.Plan.Yaml : null;
    }

    public event Action? Changed;

    public PlanDraft Start { get; }

    public string Name => Printable.Line(System.IO.Path.GetFileName(Path));

    /// <summary>Where it is written.</summary>
    internal string Path { get; private set; }

    /// <summary>True once something was written.</summary>
    internal bool WasSaved { get; private set; }

    public IReadOnlyList<Exercise> Exercises => _content.Folder.Exercises;

    public string Sound => _sound;

    public IReadOnlyList<PlanRemark> Check(PlanDraft draft) => PlanCheck.Check(draft.Warmup, _earlier).Open;

    public IReadOnlyList<string> LostComments(PlanDraft draft) => [.. Edited(draft).LostComments.Select(Printable.Line)];

    /// <summary>Into its file; where that says something else by now, or stands there already, into one beside it.</summary>
    public (bool IsSaved, string Sentence) Save(PlanDraft draft)
    {
        string yaml = Edited(draft).Yaml;
        string? reason = ChoirFolder.SavePlan(Path, _onDisk, yaml);
        if (reason is null)
        {
            return Saved(Path, yaml, AppTexts.PlanSaved(Printable.Line(Path)));
        }

        string beside = Beside(Path);
        return ChoirFolder.SavePlan(beside, null, yaml) is { } trouble
            ? (false, AppTexts.PlanNotSaved(Printable.Line(Path), reason, trouble))
            : Saved(beside, yaml, AppTexts.PlanSavedBeside(Printable.Line(Path), reason, Printable.Line(System.IO.Path.GetFileName(beside))));
    }

    public void Play(WarmupStep step)
    {
        lock (_gate)
        {
            _player ??= Opened();
            _player.Silence(++_generation);
            _player.SetTimeline(_generation, new(step.Tempo, Beats.Zero, _composition.Clock.Now + LeadTime));
            _player.Play(_generation, LineNotes.Of(step.Exercise, step.Ladder.Rungs[0]));
            _player.Pump(_composition.Clock.Now);
        }
    }

    public void Silence()
    {
        lock (_gate)
        {
            _player?.Silence(++_generation);
        }
    }

    public void Tick()
    {
        lock (_gate)
        {
            _player?.Pump(_composition.Clock.Now);
        }
    }

    /// <summary>Silences, then ends the player. May be called twice.</summary>
    public void Dispose()
    {
        lock (_gate)
        {
            _player?.Silence(++_generation);
            _player?.Dispose();
            _player = null;
        }
    }

    private IPlayer Opened()
    {
        IPlayer player = _composition.StartPlayer(PlayerFiles.None);
        player.Reported += report =>
        {
            _sound = Printable.Line(report.Sentence);
            Changed?.Invoke();
        };
        player.Open(_port);
        return player;
    }

    private EditedPlan Edited(PlanDraft draft) => Storage.Plans.PlanEditing.Write(_content.Plan.Yaml, _content.Plan.Plan, draft.Warmup.Plan, draft.Origins);

    private (bool IsSaved, string Sentence) Saved(string path, string yaml, string sentence)
    {
        (Path, _onDisk, WasSaved) = (path, yaml, true);
        Changed?.Invoke();
        return (true, sentence);
    }

    /// <summary>The first name that is free: NAME-2, NAME-3.</summary>
    private static string Beside(string path)
    {
        string stem = System.IO.Path.Combine(System.IO.Path.GetDirectoryName(path)!, System.IO.Path.GetFileNameWithoutExtension(path));
        int number = 2;
        while (File.Exists($"{stem}-{number}{System.IO.Path.GetExtension(path)}"))
        {
            number++;
        }

        return $"{stem}-{number}{System.IO.Path.GetExtension(path)}";
    }
}
