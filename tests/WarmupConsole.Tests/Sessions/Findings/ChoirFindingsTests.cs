using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Findings.Estimates;

namespace WarmupConsole.Tests.Sessions.Findings;

public class ChoirFindingsTests
{
    private const int Weak = 67;
    private static readonly string[] Scales = ["five-up-down", "triad", "five-falling"];

    [Fact]
    public void Marks_wherever_a_pitch_is_sung_point_at_that_pitch()
    {
        Finding finding = Assert.Single(HandMade.Findings(4, Scales, rung => HandMade.Sings(rung.Exercise, rung.Tonic, Weak) ? HandMade.Flat(rung.Tonic) : null).Findings);
        Assert.Equal(("alto-flat-g4", "alto", "flat", Weak), (finding.Id, finding.Part, finding.Kind, finding.Pitch.Midi));
        Assert.InRange(finding.Rate.Share, 0.95, 1);
        Assert.Equal(finding.Rate.Exposed, finding.Rate.Marked);
        Assert.Equal(0, finding.Elsewhere.Marked);
        Assert.Equal(4, finding.Sessions.Count);
        Assert.Equal((int)finding.Rate.Exposed, finding.Evidence.Count);
        Assert.All(finding.Evidence, evidence => Assert.InRange(evidence.Blamed, 0.9, 1));
    }

    [Fact]
    public void One_evening_alone_is_no_finding() =>
        Assert.Empty(HandMade.Findings(4, Scales, rung => rung.Evening == 0 && HandMade.Sings(rung.Exercise, rung.Tonic, Weak) ? HandMade.Flat(rung.Tonic) : null).Findings);

    [Fact]
    public void Praise_is_no_finding() =>
        Assert.Empty(HandMade.Findings(4, Scales, rung => HandMade.Sings(rung.Exercise, rung.Tonic, Weak) ? HandMade.Flat(rung.Tonic, kind: "good") : null).Findings);

    [Fact]
    public void Marks_in_every_key_of_one_exercise_blame_no_pitch() =>
        Assert.Empty(HandMade.Findings(4, Scales, rung => rung.Exercise == "triad" ? HandMade.Flat(rung.Tonic) : null).Findings);

    /// <summary>Marks in C alone point at the note that only C has, its tonic; unless they name its fifth.</summary>
    [Fact]
    public void A_named_pitch_wins_over_what_the_keys_alone_would_say()
    {
        Assert.Equal(60, InC(pitch: null).Pitch.Midi);
        Assert.Equal(67, InC(pitch: 67).Pitch.Midi);
    }

    [Fact]
    public void What_fails_on_one_vowel_only_is_said_to()
    {
        // noo and nee are closed, nah is open; all three hold the pitch in many keys.
        Finding finding = HandMade.Findings(
            8, [.. Scales, "octave-leap"], rung => rung.Exercise is "triad" or "octave-leap" && HandMade.Sings(rung.Exercise, rung.Tonic, Weak) ? HandMade.Flat(rung.Tonic) : null).Findings[0];
        Assert.Equal(Weak, finding.Pitch.Midi);
        Circumstance vowel = Assert.Single(finding.Circumstances, circumstance => circumstance.Aspect == Aspect.Vowel);
        Assert.Equal("ɑ", vowel.Value);
        Assert.Equal(1, vowel.There.Share);
        Assert.Equal(0, vowel.Otherwise.Share);
        Assert.Contains(FindingText.Sentences(finding, SeasonChoir.Choir), sentence => sentence.StartsWith("Above all on ɑ: ", StringComparison.Ordinal));
    }

    [Fact]
    public void What_fails_everywhere_alike_has_no_circumstance()
    {
        Finding finding = HandMade.Findings(6, Scales, rung => HandMade.Sings(rung.Exercise, rung.Tonic, Weak) && (rung.Evening + rung.Tonic) % 2 == 0 ? HandMade.Flat(rung.Tonic) : null).Findings[0];
        Assert.DoesNotContain(finding.Circumstances, circumstance => circumstance.Aspect is Aspect.Vowel or Aspect.Length);
    }

    [Fact]
    public void A_weakness_that_fades_is_getting_better()
    {
        Finding finding = HandMade.Findings(8, Scales, rung => rung.Evening < 4 && HandMade.Sings(rung.Exercise, rung.Tonic, Weak) ? HandMade.Flat(rung.Tonic) : null).Findings[0];
        Assert.Equal(TrendDirection.Better, finding.Trend.Direction);
        Assert.Contains(FindingText.Sentences(finding, SeasonChoir.Choir), sentence => sentence.StartsWith("Getting better: ", StringComparison.Ordinal));
    }

    [Fact]
    public void In_words_a_finding_says_how_often_and_on_what_it_rests()
    {
        Finding finding = HandMade.Findings(4, ["triad"], rung => HandMade.Sings(rung.Exercise, rung.Tonic, Weak) ? HandMade.Flat(rung.Tonic) : null).Findings[0];
        Assert.Equal("altos flat on G4", FindingText.Title(finding, SeasonChoir.Choir));
        IReadOnlyList<string> sentences = FindingText.Sentences(finding, SeasonChoir.Choir);
        Assert.Equal("Sung 12 times in 4 sessions; marked in about 12 of these keys.", sentences[0]);
        Assert.Matches("^This pitch brings the mark 98 % of the time \\(\\d+ to 100 %\\); in keys without it the mark comes 0 % of the time \\(0 to \\d+ %\\)\\.$", sentences[1]);
        Assert.EndsWith("; in keys without it the mark comes next to never.", FindingText.Sentences(finding with { Elsewhere = Rate.Of(0, 1000) }, SeasonChoir.Choir)[1], StringComparison.Ordinal);
        Assert.StartsWith("Evidence: 12 marks, such as \"a f\" (evening-", sentences[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_that_the_choir_no_longer_has_are_told_and_not_weighed()
    {
        ChoirFindings findings = ChoirFindings.From(
            HandMade.Sessions(2, Scales, _ => null), SeasonChoir.Choir with { Parts = [.. SeasonChoir.Choir.Parts.Where(part => part.Id != "bass")] });
        Assert.Equal(2 * 3 * 8, findings.UnknownParts["bass"]);
        Assert.DoesNotContain(findings.Rates, row => row.Part == "bass");
    }

    [Fact]
    public void Without_any_session_there_is_nothing() => Assert.Empty(ChoirFindings.From([], SeasonChoir.Choir).Findings);

    private static Finding InC(int? pitch) => HandMade.Findings(12, ["triad"], rung => rung.Tonic == 60 ? HandMade.Flat(60, pitch) : null).Findings[0];

    [Fact]
    public void Rates_count_each_rung_once_for_every_value()
    {
        ChoirFindings findings = HandMade.Findings(1, ["triad"], rung => rung.Tonic == 60 ? HandMade.Flat(60) : null);
        RateRow pitch = Assert.Single(findings.Rates, row => row is { Part: "alto", Kind: "flat", Aspect: Aspect.Pitch, Value: "64" });
        Assert.Equal((1.0, 2.0), (pitch.Rate.Marked, pitch.Rate.Exposed)); // third of C, tonic of E; A flat is the eighth key's neighbour
        RateRow vowel = Assert.Single(findings.Rates, row => row is { Part: "alto", Kind: "flat", Aspect: Aspect.Vowel });
        Assert.Equal(("ɑ", 1.0, 8.0), (vowel.Value, vowel.Rate.Marked, vowel.Rate.Exposed));
    }
}
