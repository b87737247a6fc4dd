using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Sessions.Live;

/// <summary>Live changes to the rest of the ladder. A key that was already cued stands: the choir has heard it, so the change begins behind it.</summary>
internal sealed class LiveLadder(LiveTurn turn)
{
    private LiveSession Session => turn.Session;

    public void TurnRound() => Remake(LadderEdit.TurnRound(Session.Rungs, LastFixed(Session)), LiveTexts.TurnedRound);

    public void OneMoreKey()
    {
        LadderExtension longer = LadderEdit.OneMoreKey(
            Session.Step!.Exercise,
            Session.Warmup.Choir.Parts,
            Session.Step.Plan.Keys,
            Session.Step.Ladder with { Rungs = Session.Rungs },
            LastFixed(Session));
        Part[] leftBehind = LeftBehind(longer);
        longer = longer with { Added = Session.Voicing.Of(longer.Added) };
        if (longer.Added.Parts.All(part => !part.Sings))
        {
            turn.Tell(LiveTexts.NobodySings(Session.Warmup.Choir.Notes.WriteName(longer.Added.Tonic)));
            return;
        }

        if (leftBehind.Length > 0 && !Session.WarnedBeyondExtreme)
        {
            turn.Session = Session with { WarnedBeyondExtreme = true };
            turn.Tell(leftBehind.SequenceEqual(longer.BeyondExtreme)
                ? LiveTexts.BeyondExtreme(longer.Warning)
                : LiveTexts.CannotFollow(Session.Warmup.Choir.Notes.WriteName(longer.Added.Tonic), string.Join(", ", leftBehind.Select(PartPlural.Of))));
            return;
        }

        Remake(longer.Rungs, LiveTexts.OneMoreKey);
        turn.Tell(LiveTexts.KeyAdded(Session.Warmup.Choir.Notes.WriteName(longer.Added.Tonic)));
    }

    /// <summary>Who sings in the key before the new one and cannot sing that one at all, each in the octave sung now.</summary>
    private Part[] LeftBehind(LadderExtension longer)
    {
        int added = longer.Rungs.Index().First(at => ReferenceEquals(at.Item, longer.Added)).Index;
        return [.. longer.Rungs[added - 1].Parts.Zip(Session.Voicing.Of(longer.Added).Parts)
            .Where(pair => pair.First.Sings && !pair.Second.Part.Range.Extreme.Contains(pair.Second.Span))
            .Select(pair => pair.Second.Part)];
    }

    /// <summary>Turning round needs a key behind the last one that stands.</summary>
    public static bool CanTurn(LiveSession session) => LadderEdit.TurnRound(session.Rungs, LastFixed(session)).Count > LastFixed(session) + 1;

    private static int LastFixed(LiveSession session) => session.RungIndex + (session.NextKeyCued ? 1 : 0);

    private void Remake(IReadOnlyList<Rung> rungs, string why)
    {
        int sung = LastFixed(Session) + 1;
        IReadOnlyList<int> keys = SessionKeys.Of(rungs);
        IEnumerable<Rung> rest = LadderKeys.Rungs(Session.Step!, Session.Warmup.Choir.Parts, keys.Skip(sung)).Select(Session.Voicing.Of);
        turn.Session = Session with { Rungs = [.. rungs.Take(sung), .. rest], WarnedBeyondExtreme = false };
        turn.Record(new LadderChanged(Session.StepIndex, sung - 1, keys, why));
    }
}
