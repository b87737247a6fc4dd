namespace WarmupConsole.Music.Pitches;

/// <summary>The names of one naming, without octaves: the first spelling of each note is written, all of them are read.</summary>
internal sealed class NoteNames
{
    /// <summary>As far as spelling goes when a pattern with altered degrees stands in a remote key.</summary>
    private const int MostSigns = 3;

    private readonly Func<Step, int, IEnumerable<string>> _spellings;
    private readonly Dictionary<string, Pitch> _read = new(StringComparer.OrdinalIgnoreCase);

    internal NoteNames(Func<Step, int, IEnumerable<string>> spellings)
    {
        _spellings = spellings;
        foreach (Step step in Enum.GetValues<Step>())
        {
            for (int alteration = -MostSigns; alteration <= MostSigns; alteration++)
            {
                Add(new(step, alteration, Pitch.MiddleC.Octave));
            }
        }

        Longest = _read.Keys.Max(name => name.Length);
    }

    /// <summary>Characters of the longest name.</summary>
    internal int Longest { get; }

    internal string Write(Step step, int alteration) => _spellings(step, alteration).First();

    internal bool TryFind(string name, out Pitch pitch) => _read.TryGetValue(name, out pitch);

    private void Add(Pitch pitch)
    {
        foreach (string spelling in _spellings(pitch.Step, pitch.Alteration).Distinct())
        {
            _read.Add(spelling, pitch);
        }
    }
}
