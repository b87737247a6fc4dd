using System.Globalization;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>Puts findings together from the fit in which their pitches were found.</summary>
/// <param name="situations">Of the part.</param>
/// <param name="kind">Id of the kind of mark.</param>
/// <param name="marks">Of the kind.</param>
/// <param name="fit">Of all weak pitches.</param>
/// <param name="sessions">Oldest first.</param>
internal sealed class FindingOf(Situations situations, string kind, MarkGroups marks, NoisyOr fit, IReadOnlyList<SungSession> sessions)
{
    private const double LeastBlame = 0.05;

    private readonly Exposures exposures = situations.Exposures;
    private readonly int[] marked = fit.Rows();

    /// <param name="weak">The pitches with their p-values.</param>
    internal IEnumerable<Finding> All(IReadOnlyList<(int Pitch, double Chance)> weak)
    {
        foreach ((int pitch, double chance) in weak)
        {
            NoisyOr without = NoisyOr.Fit(exposures, marks, [.. weak.Select(other => other.Pitch).Where(other => other != pitch)], fit);
            yield return One(pitch, chance, fit.LogLikelihood - without.LogLikelihood);
        }
    }

    private Finding One(int pitch, double chance, double strength)
    {
        IEnumerable<(PartMark Mark, double Meant, double Blamed)> attribution = fit.Attribution(pitch);
        int[] rows = exposures.RowsWith(pitch);
        double meant = Math.Min(rows.Length, attribution.Sum(mark => mark.Meant * mark.Mark.Share));
        double all = Math.Min(exposures.Rows.Length - rows.Length, marks.Marks.Sum(mark => mark.Share) - meant);
        SessionShare[] shares = [.. Shares(rows, attribution)];
        Pitch spelled = KeySpelling.TonicFor(pitch, Mode.Major);
        return new()
        {
            Id = string.Create(CultureInfo.InvariantCulture, $"{exposures.Part}-{kind}-{spelled.ToAscii().ToLowerInvariant().Replace("#", "-sharp", StringComparison.Ordinal)}"),
            Part = exposures.Part,
            Kind = kind,
            Pitch = spelled,
            Rate = new(meant, rows.Length, fit.ChanceOf(pitch), Math.Min(rows.Length, fit.WorthOf(pitch))),
            Elsewhere = Rate.Of(Math.Max(0, all), exposures.Rows.Length - rows.Length),
            Strength = strength,
            Chance = chance,
            Circumstances = CircumstancesOf.Pitch(situations, pitch, rows, marked),
            Trend = TrendOf.Of(shares),
            Sessions = shares,
            Evidence = [.. attribution.Where(mark => mark.Blamed >= LeastBlame).Select(mark => new Evidence(sessions[mark.Mark.Session].Name, mark.Mark.Mark.Id, mark.Mark.Mark.Raw, mark.Blamed))],
        };
    }

    private IEnumerable<SessionShare> Shares(int[] rows, IEnumerable<(PartMark Mark, double Meant, double Blamed)> attribution)
    {
        double[] blames = new double[sessions.Count];
        foreach ((PartMark mark, _, double blamed) in attribution)
        {
            blames[mark.Session] += blamed * mark.Share;
        }

        int[] sung = new int[sessions.Count];
        foreach (int row in rows)
        {
            sung[exposures.Rows[row].Session]++;
        }

        return sung.Index().Where(session => session.Item > 0)
            .Select(session => new SessionShare(sessions[session.Index].Name, sessions[session.Index].Start, blames[session.Index], session.Item));
    }
}
