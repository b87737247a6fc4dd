namespace WarmupConsole.Music.Exercises;

/// <summary>Which stage a line with its syllables belongs to; body and breathing have no line, and settling is a wish that no line shows.</summary>
public static class StageProposal
{
    private const string Nasals = "mnŋɲ";

    /// <summary>Humming for nasals alone, lip trill for other half-closed sounds, slide for a glide on vowels; else sung.</summary>
    public static Stage For(Exercise exercise)
    {
        string[] vowels = [.. exercise.Lines.SelectMany(line => line.Notes).Select(note => note.Syllable?.Vowel).OfType<string>().Distinct()];
        bool isHalfClosed = vowels.Length > 0 && Array.TrueForAll(vowels, VowelData.IsHalfClosed);
        return (isHalfClosed, exercise.Articulation) switch
        {
            (true, _) when Array.TrueForAll(vowels, vowel => Nasals.Contains(vowel[0], StringComparison.Ordinal)) => Stage.Humming,
            (true, _) => Stage.LipTrill,
            (false, Articulation.Glide) => Stage.Slide,
            _ => Stage.Sung,
        };
    }
}
