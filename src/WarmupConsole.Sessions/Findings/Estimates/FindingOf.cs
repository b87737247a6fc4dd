using System.Globalization;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>Puts a finding together from the fit in which its pitch was found.</summary>
internal sealed class FindingOf(Situations situations, string kind, MarkGroups marks, IReadOnlyList<SungSession> sessions)
{
    private const double LeastBlame = 0.05;

    private readonly Exposures exposures = situations.Exposures;

    /// <param name="weak">The pitches with their p-values.</param>
    /// <param name="fit">Of them all.</param>
    internal IEnumerable<Finding> All(IReadOnlyList<(int Pitch, double Chance)> weak, NoisyOr fit)
    {
        foreach ((int pitch, double chance) in weak)
        {
            NoisyOr without = NoisyOr.Fit(exposures, marks, [.. weak.Select(other => other.Pitch).Where(other => other != pitch)], fit);
            yield return One(fit, pitch, chance, fit.LogLikelihood - without.LogLikelihood);
        }
    }

    private Finding One(NoisyOr fit, int pitch, double chance, double strength)
    {
        (PartMark Mark, double Meant, double Blamed)[] attribution = [.. fit.Attribution(pitch)];
        int exposed = exposures.Exposed(pitch);
        double meant = Math.Min(exposed, attribution.Sum(mark => mark.Meant * mark.Mark.Share));
        double all = Math.Min(exposures.Rows.Length - exposed, marks.Marks.Sum(mark => mark.Share) - meant);
        SessionShare[] shares = [.. Shares(pitch, attribution)];
        Pitch spelled = KeySpelling.TonicFor(pitch, Mode.Major);
        return new()
        {
            Id = string.Create(CultureInfo.InvariantCulture, $"{exposures.Part}-{kind}-{spelled.ToAscii().ToLowerInvariant().Replace("#", "-sharp", StringComparison.Ordinal)}"),
            Part = exposures.Part,
            Kind = kind,
            Pitch = spelled,
            Rate = new(meant, exposed, fit.ChanceOf(pitch), Math.Min(exposed, fit.WorthOf(pitch))),
            Elsewhere = Rate.Of(Math.Max(0, all), exposures.Rows.Length - exposed),
            Strength = strength,
            Chance = chance,
            Circumstances = CircumstancesOf.Pitch(situations, pitch, exposures.Among(fit.Rows())),
            Trend = TrendOf.Of(shares),
            Sessions = shares,
            Evidence = [.. attribution.Where(mark => mark.Blamed >= LeastBlame).Select(mark => new Evidence(sessions[mark.Mark.Session].Name, mark.Mark.Mark.Id, mark.Mark.Mark.Raw, mark.Blamed))],
        };
    }

    private IEnumerable<SessionShare> Shares(int pitch, (PartMark Mark, double Meant, double Blamed)[] attribution)
    {
        Dictionary<int, double> blamed = attribution.GroupBy(mark => mark.Mark.Session)
            .ToDictionary(session => session.Key, session => session.Sum(mark => mark.Blamed * mark.Mark.Share));
        int[] sung = new int[sessions.Count];
        foreach (ExposureRow row in exposures.Rows)
        {
            sung[row.Session] += row.Line.Has(pitch) ? 1 : 0;
        }

        return sung.Index().Where(session => session.Item > 0)
            .Select(session => new SessionShare(sessions[session.Index].Name, sessions[session.Index].Start, blamed.GetValueOrDefault(session.Index), session.Item));
    }
}
