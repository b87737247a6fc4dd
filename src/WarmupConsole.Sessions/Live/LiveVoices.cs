using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Sessions.Live;

/// <summary>
/// A ladder from another key on, for some parts, or with a part in another octave. What was sung, sounds or was cued stands; what
/// is held is led in to anew, so it changes too.
/// </summary>
internal sealed class LiveVoices(LiveTurn turn)
{
    private LiveSession Session => turn.Session;

    /// <summary>Why a key cannot be jumped to, or null.</summary>
    public string? WhyNotJump(Pitch tonic) =>
        Session.Rungs.Count > 0 && !Ladder([tonic.Midi])[0].Parts.Any(part => part.Sings) ? LiveTexts.NobodySingsIn(Name(tonic)) : null;

    /// <summary>Behind the present key comes the one asked for, and from there the ladder goes on: as it was, if it has that key, or as the plan shapes one.</summary>
    public void Jump(Pitch tonic, bool isUnsung)
    {
        int from = isUnsung ? 0 : Session.RungIndex + 1;
        int[] ahead = [.. Keys.Skip(from)];
        int at = Array.IndexOf(ahead, tonic.Midi);
        IEnumerable<int> rest = at >= 0 ? ahead.Skip(at + 1) : Onwards(tonic);
        Change(from, [tonic.Midi, .. rest], LiveTexts.JumpedTo(Name(tonic)));
    }

    /// <summary>Only these parts; none for everyone. The rest of the ladder goes as far as they go.</summary>
    public void Choose(IReadOnlyList<string> partIds)
    {
        int from = FirstFree();
        Voicing chosen = Session.Voicing with { Only = partIds };
        int[] rest = [.. RestFor(chosen, from)];
        if (rest.Length == 0)
        {
            turn.Tell(LiveTexts.NoKeyFor(Words(partIds)));
            return;
        }

        turn.Session = Session with { Voicing = chosen };
        turn.Record(new PartsChosen(Session.StepIndex, partIds));
        Change(from, rest, LiveTexts.PartsChanged);
        turn.Tell(LiveTexts.NowSing(Words(partIds)));
    }

    /// <summary>To the octave in which the part can sing more of the keys to come, and back.</summary>
    public void Swap(string partId)
    {
        int from = FirstFree();
        int octaves = Session.Voicing.Octaves.ContainsKey(partId) ? 0 : BetterOctave(partId, from);
        if (octaves == 0 && !Session.Voicing.Octaves.ContainsKey(partId))
        {
            turn.Tell(LiveTexts.NoOctaveFor(Words([partId])));
            return;
        }

        turn.Session = Session with { Voicing = Session.Voicing.With(partId, octaves) };
        turn.Session = Session with { Rungs = [.. Session.Rungs.Take(from), .. Ladder(Keys.Skip(from))] };
        turn.Record(new OctaveChanged(Session.StepIndex, partId, octaves));
        turn.Tell(octaves > 0 ? LiveTexts.OctaveHigher(Words([partId])) : octaves < 0 ? LiveTexts.OctaveLower(Words([partId])) : LiveTexts.OwnOctave(Words([partId])));
    }

    private IReadOnlyList<int> Keys => SessionKeys.Of(Session.Rungs);

    /// <summary>The first rung that may still change: nothing of it sounds or was cued.</summary>
    private int FirstFree() => Session switch
    {
        { State: LiveState.Introduce } => 0,
        { Hold: not Hold.None, State: LiveState.Cue or LiveState.CountIn or LiveState.Rung } => Session.RungIndex,
        { Hold: Hold.None, State: LiveState.Breath } or { NextKeyCued: true } => Session.RungIndex + 2,
        _ => Session.RungIndex + 1,
    };

    /// <summary>On the way out as far as the chosen parts go; on the way back, and behind the last key, what is left of it for them.</summary>
    private IEnumerable<int> RestFor(Voicing chosen, int from)
    {
        if (!Chosen(chosen).Any())
        {
            return [];
        }

        LadderSpec spec = Session.Step!.Plan.Keys;
        int direction = spec.Shape is LadderShape.Down or LadderShape.DownAndBack ? -1 : 1;
        bool outwards = from >= Keys.Count || from == 0 || direction * (Keys[from] - Keys[from - 1]) >= 0;
        return outwards && from < Keys.Count
            ? LadderBuilder.Build(Session.Step.Exercise, [.. Chosen(chosen)], spec with { Limit = LadderSpec.Everyone, Start = Session.Rungs[from].Tonic }).Rungs.Select(rung => rung.Tonic.Midi)
            : Keys.Skip(from).Where(key => chosen.Of(Planned([key])[0]).Parts.Any(part => part.Sings));
    }

    private IEnumerable<Part> Chosen(Voicing chosen) => Session.Warmup.Choir.Parts.Where(part => chosen.Includes(part.Id));

    /// <summary>The keys after one, as the plan shapes a ladder that begins there.</summary>
    private IEnumerable<int> Onwards(Pitch tonic)
    {
        LadderSpec spec = Session.Step!.Plan.Keys with { Start = tonic };
        LadderSpec forChosen = Session.Voicing.Only.Count == 0 ? spec : spec with { Limit = LadderSpec.Everyone };
        return LadderBuilder.Build(Session.Step.Exercise, [.. Chosen(Session.Voicing)], forChosen).Rungs
            .Select(rung => rung.Tonic.Midi).SkipWhile((key, index) => index == 0 && key == tonic.Midi);
    }

    private int BetterOctave(string partId, int from)
    {
        RungPart[] planned = [.. Planned(Keys.Skip(Math.Min(from, Keys.Count - 1))).SelectMany(rung => rung.Parts).Where(part => part.Part.Id == partId)];
        (int below, int above) = (Singable(planned, -1), Singable(planned, 1));
        return (below, above) == (0, 0) ? 0 : above > below ? 1 : -1;
    }

    private static int Singable(RungPart[] planned, int octaves) => planned.Count(part => Voicing.Shifted(part, octaves).Sings);

    private void Change(int from, IReadOnlyList<int> rest, string why)
    {
        turn.Session = Session with { Rungs = [.. Session.Rungs.Take(from), .. Ladder(rest)], WarnedBeyondExtreme = false };
        turn.Record(new LadderChanged(Session.StepIndex, Math.Max(0, from - 1), SessionKeys.Of(Session.Rungs), why));
    }

    private IReadOnlyList<Rung> Planned(IEnumerable<int> keys) => LadderKeys.Rungs(Session.Step!, Session.Warmup.Choir.Parts, keys);

    private IReadOnlyList<Rung> Ladder(IEnumerable<int> keys) => [.. Planned(keys).Select(Session.Voicing.Of)];

    private string Words(IReadOnlyList<string> partIds) => Marks.PartNames.Sentence(Session.Warmup.Choir, partIds);

    private string Name(Pitch tonic) => Session.Warmup.Choir.Notes.WriteName(tonic);
}
