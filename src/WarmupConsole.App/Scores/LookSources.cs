using WarmupConsole.App.Running;
using WarmupConsole.Music.Repertoire.Places;
using WarmupConsole.Music.Repertoire.Words;

namespace WarmupConsole.App.Scores;

/// <summary>What a score is looked at with, and how that is said.</summary>
/// <param name="Question">For the measure.</param>
/// <param name="VowelSentence">By which language's rules, or why by none.</param>
/// <param name="WeakSentence">What the logs add.</param>
internal sealed record LookSources(LookQuestion Question, string VowelSentence, string WeakSentence)
{
    internal bool AsPlayed => Question.AsPlayed;

    /// <param name="score">The score with its choir.</param>
    /// <param name="language">As the director says it, or null.</param>
    /// <param name="asPlayed">Repeats count.</param>
    internal static LookSources Of(OpenedScore score, string? language, bool asPlayed)
    {
        string code = language ?? score.Language;
        WeakPitch[] weak = score.Folder.SessionPaths.Count == 0
            ? []
            : [.. SeasonReview.Of(score.Folder).Findings.Select(finding => new WeakPitch(finding.Part, finding.Pitch.Midi)).Distinct()];
        string vowels = LanguageVowels.NameOf(code) is { } name ? ScoreTexts.VowelsBy(name)
            : code.Length == 0 ? ScoreTexts.NoLanguage
            : ScoreTexts.NoVowelRules(code);
        return new(new(asPlayed, LanguageVowels.For(code), weak), vowels, weak.Length == 0 ? ScoreTexts.NoWeakPitches : ScoreTexts.WeakPitches(weak.Length));
    }
}
