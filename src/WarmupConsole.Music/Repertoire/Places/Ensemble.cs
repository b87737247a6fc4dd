using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Repertoire.Places;

/// <summary>How many voices sound, and how many come in, at a moment.</summary>
internal sealed class Ensemble
{
    private static readonly Beats Together = Beats.FromFraction(1, 4);
    private static readonly Beats RestBefore = Beats.FromBeats(1);
    private readonly Beats[] starts;
    private readonly Beats[] ends;
    private readonly Beats[] entries;

    internal Ensemble(IEnumerable<IReadOnlyList<SungTone>> voices)
    {
        IReadOnlyList<SungTone>[] all = [.. voices];
        starts = [.. all.SelectMany(tones => tones).Select(tone => tone.Start).Order()];
        ends = [.. all.SelectMany(tones => tones).Select(tone => tone.End).Order()];
        entries = [.. all.SelectMany(tones => tones.Where((_, at) => Begins(tones, at, RestBefore))).Select(tone => tone.Start).Order()];
    }

    /// <summary>True for the first tone, and for one after a rest of so many beats.</summary>
    internal static bool Begins(IReadOnlyList<SungTone> tones, int at, Beats rest) => at == 0 || tones[at].Start - tones[at - 1].End >= rest;

    /// <summary>Voices that sound at a moment or begin with it.</summary>
    internal int Sounding(Beats moment) => UpTo(starts, moment + Together) - UpTo(ends, moment);

    /// <summary>Voices that come in at a moment, after a beat of rest or more.</summary>
    internal int Entering(Beats moment) => UpTo(entries, moment + Together) - UpTo(entries, moment - Together - new Beats(1));

    /// <summary>How many are not later than a moment.</summary>
    private static int UpTo(Beats[] moments, Beats moment)
    {
        (int low, int high) = (0, moments.Length);
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = moments[middle] <= moment ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
