using WarmupConsole.Midi.Listening;
using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Sessions.Hands;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Storage.Folders;

namespace WarmupConsole.App.Running;

/// <summary>
/// What is played and trodden on while a session runs: pedals act, a control is learnt, keys are handed on. Everything is bounded
/// before it reaches the session: only presses, and notes where somebody waits for them.
/// </summary>
internal sealed class Hands : IDisposable
{
    private readonly Lock _lock = new();
    private readonly SessionHost _host;
    private readonly SettingsFolder _settings;
    private readonly IMonotonicClock _clock;
    private readonly Dictionary<int, int> _controllers = [];
    private PedalWatch _watch;
    private PedalLearning? _learning;
    private RestartingEar? _ear;
    private string _sentence = "";
    private bool _isOpen;
    private bool _isDeaf;

    internal Hands(SessionHost host, SettingsFolder settings, IMonotonicClock clock)
    {
        (_host, _settings, _clock) = (host, settings, clock);
        _watch = PedalWatch.For(settings.ReadSettings().Value?.Pedals ?? Pedals.None);
        host.Hands = this;
        Show();
    }

    /// <summary>Begins to listen.</summary>
    internal void Listen(RestartingEar ear)
    {
        _ear = ear;
        ear.Heard += Hear;
        ear.Told += Tell;
        ear.Start();
    }

    /// <summary>Nothing will ever be heard in this run, for this reason.</summary>
    internal void ListenToNothing(string why) => (_sentence, _isDeaf) = (why, true);

    /// <summary>The console begins to follow; where nothing is heard that could be followed, the director is to know at once.</summary>
    internal void BeginToFollow()
    {
        lock (_lock)
        {
            if (!_isOpen && _sentence.Length > 0)
            {
                Warn(_sentence);
            }
        }
    }

    /// <summary>Waits for the control that is to do this; null forgets them all.</summary>
    internal void Learn(PedalUse? use)
    {
        lock (_lock)
        {
            _learning = use is { } wanted ? new(wanted, new Dictionary<int, int>(_controllers)) : null;
            if (use is null)
            {
                Keep(Pedals.None, AppTexts.PedalsForgotten);
            }
            else if (!_isOpen && (_isDeaf || _ear is not null))
            {
                _learning = null;
                Say($"{AppTexts.NothingLearnt} {_sentence}");
            }
            else
            {
                Say(AppTexts.PedalWanted(PedalUseData.Words(use.Value)));
            }
        }
    }

    /// <summary>From the listening thread.</summary>
    internal void Hear(MidiMessage message)
    {
        Touch touch = new(message.Kind != MidiMessageKind.ControlChange, message.Data1, message.Kind == MidiMessageKind.NoteOff ? 0 : message.Data2);
        if (touch.IsKey && _host.IsEcho(touch.Number, isDown: touch.Value > 0))
        {
            return;
        }

        lock (_lock)
        {
            if (_learning is { } learning)
            {
                Learn(learning, touch);
            }
            else
            {
                Act(touch);
            }

            if (!touch.IsKey)
            {
                _controllers[touch.Number] = touch.Value;
            }
        }
    }

    /// <summary>What the listening process says about its input.</summary>
    internal void Tell(string sentence, bool isOpen)
    {
        lock (_lock)
        {
            bool wasWanted = _watch.Pedals.Bound.Count > 0 || _isOpen || _host.Session.Follows;
            (_sentence, _isOpen) = (sentence, isOpen);
            if (!isOpen)
            {
                _watch = PedalWatch.For(_watch.Pedals); // what comes back may stand otherwise
                _controllers.Clear();
            }

            if (!isOpen && _learning is not null)
            {
                _learning = null;
                Say($"{AppTexts.NothingLearnt} {sentence}");
            }
            else if (!isOpen && _host.Session.Follows)
            {
                Warn(sentence);
            }
            else if (wasWanted)
            {
                Say(sentence);
            }

            Show();
        }
    }

    public void Dispose() => _ear?.Dispose();

    private void Learn(PedalLearning learning, Touch touch)
    {
        (_learning, Control? learnt) = learning.After(touch);
        if (learnt is { } control)
        {
            _learning = null;
            Keep(_watch.Pedals.With(learning.Use, control), AppTexts.PedalLearnt(control.ToString(), PedalUseData.Words(learning.Use)));
        }
    }

    private void Act(Touch touch)
    {
        (_watch, PedalUse? pressed) = _watch.After(touch, _clock.Now);
        if (pressed is { } use)
        {
            _host.Post(PedalUseData.Input(use));
        }
        else if (touch is { IsKey: true, Value: > 0 } && _watch.Pedals.Find(true, touch.Number) is null)
        {
            _host.Play(touch.Number);
        }
    }

    private void Keep(Pedals pedals, string sentence)
    {
        _watch = PedalWatch.For(pedals);
        string? trouble = _settings.ReadSettings().Value is { } settings ? _settings.WriteSettings(settings with { Pedals = pedals }) : AppTexts.SettingsFaulty;
        Say(trouble is null ? sentence : $"{sentence} {AppTexts.NotSaved(_settings.SettingsPath, trouble)}");
        Show();
    }

    /// <summary>It stays on the screen: what is played leads to nothing.</summary>
    private void Warn(string sentence) => _host.Post(new LiveInput.Warning(sentence));

    private void Say(string sentence) => _host.Post(new LiveInput.News(sentence));

    private void Show()
    {
        string pedals = _watch.Pedals.ToString();
        string hands = (pedals.Length, _isOpen) switch
        {
            (0, false) => "", // nobody asked for it
            (0, true) => _sentence,
            _ => $"{AppTexts.PedalsAre(pedals)} {_sentence}".Trim(),
        };
        _host.Show(status => status with { Hands = hands });
    }
}
