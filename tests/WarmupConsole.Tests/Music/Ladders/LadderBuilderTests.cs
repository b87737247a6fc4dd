using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Tests.Music.Ladders;

public class LadderBuilderTests
{
    [Fact]
    public void The_usual_ladder_climbs_from_middle_c_by_semitones_and_comes_back() =>
        Assert.Equal("C D♭ D E♭ E F E E♭ D D♭ C", Keys(Samples.FiveNotes, new()));

    [Theory]
    [InlineData(LadderShape.Up, "C D♭ D E♭ E F")]
    [InlineData(LadderShape.Down, "F E E♭ D D♭ C")]
    [InlineData(LadderShape.DownAndBack, "F E E♭ D D♭ C D♭ D E♭ E F")]
    public void Every_shape_takes_its_way(LadderShape shape, string keys) =>
        Assert.Equal(keys, Keys(Samples.FiveNotes, new() { Shape = shape, Start = Pitch.Parse(shape == LadderShape.Up ? "C4" : "F4") }));

    [Fact]
    public void Out_from_the_middle_goes_up_and_down_in_turn_and_says_why_it_stops_on_both_sides()
    {
        KeyLadder ladder = Build(Samples.FiveNotes, new() { Shape = LadderShape.OutFromTheMiddle, Start = Pitch.Parse("D4") });

        Assert.Equal("D E♭ D♭ E C F", Keys(ladder));
        Assert.Equal(
            [
                "Stops at F: in G♭ the altos would need D♭5, a semitone above their comfortable C5.",
                "Stops at C: in B the sopranos would need B3, a semitone below their comfortable C4.",
            ],
            ladder.Reasons);
    }

    [Fact]
    public void Out_from_the_middle_counts_all_its_keys()
    {
        KeyLadder ladder = Build(Samples.FiveNotes, new() { Shape = LadderShape.OutFromTheMiddle, Start = Pitch.Parse("D4"), MostKeys = 4 });

        Assert.Equal("D E♭ D♭ E", Keys(ladder));
        Assert.Equal(["Stops at E: the plan asks for 4 keys at most."], ladder.Reasons);
    }

    [Theory]
    [InlineData(2, LadderShape.UpAndBack, "C D E D C")]
    [InlineData(3, LadderShape.Up, "C E♭")]
    [InlineData(5, LadderShape.Up, "C F")]
    [InlineData(12, LadderShape.UpAndBack, "C")]
    public void Keys_may_lie_further_apart_than_a_semitone(int step, LadderShape shape, string keys) =>
        Assert.Equal(keys, Keys(Samples.FiveNotes, new() { StepSemitones = step, Shape = shape }));

    [Fact]
    public void The_reason_speaks_of_the_key_that_would_come_next() => Assert.Equal(
        ["Stops at E♭: in G♭ the altos would need D♭5, a semitone above their comfortable C5."],
        Build(Samples.FiveNotes, new() { StepSemitones = 3, Shape = LadderShape.Up }).Reasons);

    [Fact]
    public void A_part_may_take_the_octave_instead_of_resting()
    {
        KeyLadder ladder = Build(Samples.FiveNotes, new() { Limit = "soprano", Shape = LadderShape.Up, TakesOctave = true });

        Assert.Equal("C D♭ D E♭ E F G♭ G A♭ A B♭", Sung(ladder, "alto"));
        RungPart alto = ladder.Rungs[8].Parts[1];
        Assert.Equal((-1, "A♭3–E♭4"), (alto.OctaveShift, alto.Span.ToString()));
        RungPart bass = ladder.Rungs[^1].Parts[3];
        Assert.Equal((-2, "B♭2–F3"), (bass.Octaves, bass.Span.ToString()));
    }

    [Fact]
    public void Who_enters_or_leaves_is_announced_one_rung_ahead()
    {
        KeyLadder ladder = Build(Samples.FiveNotes, new() { Limit = "soprano" });

        Assert.Equal(
            [(7, "In A♭ the altos rest, the basses rest."), (12, "In G the altos sing, the basses sing.")],
            ladder.Announcements.Select(announcement => (announcement.Rung, announcement.Sentence)));
        Assert.Equal(["alto", "bass"], ladder.Announcements[0].Leave.Select(part => part.Id));
        Assert.Empty(ladder.Announcements[0].Enter);
        Assert.Null(LadderAnnouncement.Ahead(ladder.Rungs, 6, NoteNaming.Scientific));
        Assert.Null(LadderAnnouncement.Ahead(ladder.Rungs, ladder.Rungs.Count - 1, NoteNaming.Scientific));
    }

    [Fact]
    public void A_change_of_octave_is_announced_too() => Assert.Equal(
        "In A♭ the altos take the lower octave, the basses take the lower octave.",
        Build(Samples.FiveNotes, new() { Limit = "soprano", Shape = LadderShape.Up, TakesOctave = true }).Announcements[0].Sentence);

    [Fact]
    public void Two_ladders_are_offered_as_keys_with_their_parts()
    {
        LadderOffer offer = Build("1 2 3 4 5 6 7 8 9", new()).Offer!;

        Assert.Equal("alto bass: G3 to B♭3, from G3", Words(offer.Lower));
        Assert.Equal("soprano tenor: C4 to E♭4, from C4", Words(offer.Higher));
        Assert.Null(Build(Samples.FiveNotes, new()).Offer);

        static string Words(LadderHalf half) => $"{string.Join(' ', half.Parts.Select(part => part.Id))}: {half.Lowest} to {half.Highest}, from {half.Start}";
    }

    [Fact]
    public void The_plan_may_ask_for_fewer_keys()
    {
        KeyLadder ladder = Build(Samples.FiveNotes, new() { MostKeys = 3 });

        Assert.Equal("C D♭ D D♭ C", Keys(ladder));
        Assert.Equal(["Stops at D: the plan asks for 3 keys at most."], ladder.Reasons);
    }

    [Fact]
    public void A_single_key_is_sung_once() => Assert.Equal("C", Keys(Samples.FiveNotes, new() { MostKeys = 1 }));

    [Fact]
    public void A_ladder_says_which_part_stops_it() => Assert.Equal(
        ["Stops at F: in G♭ the altos would need D♭5, a semitone above their comfortable C5."],
        Build(Samples.FiveNotes, new()).Reasons);

    [Fact]
    public void A_start_that_does_not_fit_moves_to_the_nearest_key_and_says_why()
    {
        KeyLadder ladder = Build(Samples.FiveNotes, new() { Start = Pitch.Parse("A3"), Shape = LadderShape.Up });

        Assert.Equal("C D♭ D E♭ E F", Keys(ladder));
        Assert.Equal("Starts at C: in A the sopranos would need A3, 3 semitones below their comfortable C4.", ladder.Reasons[0]);
    }

    [Fact]
    public void The_plan_may_spell_its_own_start() =>
        Assert.Equal("C♯ D C♯", Keys(Samples.FiveNotes, new() { Start = Pitch.Parse("C#4"), MostKeys = 2 }));

    [Fact]
    public void A_start_beyond_seven_accidentals_is_respelled() =>
        Assert.Equal("E♭", Keys(Samples.FiveNotes, new() { Start = Pitch.Parse("D#4"), MostKeys = 1 }));

    [Fact]
    public void Reach_widens_by_its_share_rounded_down_to_semitones()
    {
        // Altos: comfortable to C5, extreme to D5. Half of two semitones is one; a third of two is none.
        Assert.Equal("G♭", Top(new() { ReachPercent = 50 }));
        Assert.Equal("F", Top(new() { ReachPercent = 33 }));
        Assert.Equal("G", Top(new() { ReachPercent = 100 }));
        Assert.Equal(
            "Stops at G♭: in G the altos would need D5, 2 semitones above their comfortable C5, more than a reach of 50 % allows.",
            Build(Samples.FiveNotes, new() { ReachPercent = 50 }).Reasons[0]);
        Assert.Equal(
            "Stops at G: in A♭ the altos would need E♭5, a semitone above their highest note D5.",
            Build(Samples.FiveNotes, new() { ReachPercent = 100 }).Reasons[0]);
    }

    [Fact]
    public void With_the_sopranos_as_limit_the_others_sing_within_their_tolerance_and_then_rest()
    {
        KeyLadder ladder = Build(Samples.FiveNotes, new() { Limit = "soprano", Shape = LadderShape.Up });

        Assert.Equal("C D♭ D E♭ E F G♭ G A♭ A B♭", Keys(ladder));
        Assert.Equal("C D♭ D E♭ E F G♭ G", Sung(ladder, "alto"));
        Assert.Equal("Stops at B♭: in B the sopranos would need F♯5, a semitone above their comfortable F5.", Assert.Single(ladder.Reasons));
    }

    [Fact]
    public void A_tolerance_never_leads_past_extreme() =>
        Assert.Equal("C D♭ D E♭ E F G♭ G", Sung(Build(Samples.FiveNotes, new() { Limit = "soprano", Shape = LadderShape.Up, ToleranceSemitones = 12 }), "alto"));

    [Fact]
    public void Without_tolerance_a_part_rests_as_soon_as_its_comfortable_range_ends() =>
        Assert.Equal("C D♭ D E♭ E F", Sung(Build(Samples.FiveNotes, new() { Limit = "soprano", Shape = LadderShape.Up, ToleranceSemitones = 0 }), "alto"));

    [Fact]
    public void A_group_may_be_the_limit() =>
        Assert.Equal("C D♭ D E♭ E F G♭ G A♭ A B♭", Keys(Samples.FiveNotes, new() { Limit = "upper", Shape = LadderShape.Up }));

    [Fact]
    public void Any_part_goes_on_until_the_last_one_would_leave_its_range()
    {
        KeyLadder ladder = Build(Samples.FiveNotes, new() { Limit = LadderSpec.AnyPart, Shape = LadderShape.Down });

        Assert.Equal("C B B♭ A A♭ G", Keys(ladder));
        Assert.Equal("Stops at G: in G♭ the altos would need G♭3, a semitone below their comfortable G3.", Assert.Single(ladder.Reasons));
    }

    [Fact]
    public void Of_two_keys_as_near_the_lower_one_starts()
    {
        Part[] parts = [Samples.Part("High", "F4-F5", "F4-F5", 0), Samples.Part("Low", "C3-D4", "C3-D4", 0)];

        KeyLadder ladder = LadderBuilder.Build(Samples.Exercise("1 2 3 4 5"), parts, new() { Limit = LadderSpec.AnyPart, MostKeys = 1 });

        // From middle C the fourth above (F4) and the fourth below (G3) both serve.
        Assert.Equal("G", Keys(ladder));
    }

    [Fact]
    public void A_key_between_the_voices_stops_a_ladder_for_any_part()
    {
        Part[] parts = [Samples.Part("High", "F4-F5", "F4-F5", 0), Samples.Part("Low", "C3-D4", "C3-D4", 0)];

        KeyLadder ladder = LadderBuilder.Build(Samples.Exercise("1 2 3 4 5"), parts, new() { Limit = LadderSpec.AnyPart, Start = Pitch.Parse("Gb3"), Shape = LadderShape.Up });

        Assert.Equal("G♭ G", Keys(ladder));
        Assert.Equal("Stops at G: in A♭ the lows would need E♭4, a semitone above their comfortable D4.", Assert.Single(ladder.Reasons));
    }

    [Fact]
    public void Men_sing_an_octave_below_the_women()
    {
        Rung rung = Build(Samples.FiveNotes, new()).Rungs[0];

        Assert.Equal(["C4–G4", "C4–G4", "C3–G3", "C3–G3"], rung.Parts.Select(part => part.Span.ToString()));
        Assert.All(rung.Parts, part => Assert.True(part.Sings));
    }

    [Fact]
    public void Minor_ladders_are_spelled_in_minor() => Assert.Equal(
        "C C♯ D",
        Keys(LadderBuilder.Build(Samples.Exercise("1 2 3 2 1", Mode.Minor), Samples.Choir(), new() { Shape = LadderShape.Up, MostKeys = 3 })));

    [Fact]
    public void No_key_for_everyone_is_explained_and_two_ladders_are_offered()
    {
        KeyLadder ladder = Build("1 2 3 4 5 6 7 8 9", new());

        Assert.Empty(ladder.Rungs);
        Assert.Equal(
            [
                "No key fits everyone: the altos need B♭3 or lower, the sopranos C4 or higher.",
                "No key fits everyone; two ladders would serve: first the altos and the basses in G3 to B♭3, then the sopranos and the tenors in C4 to E♭4.",
            ],
            ladder.Reasons);
    }

    [Fact]
    public void Few_keys_for_everyone_bring_the_offer_too() => Assert.Equal(
        "Only one key fits everyone; two ladders would serve: first the altos and the basses in G3 to C4, then the sopranos and the tenors in C4 to F4.",
        Build("1 3 5 8 5 3 1", new()).Reasons[^1]);

    [Fact]
    public void A_pattern_wider_than_a_range_says_so() => Assert.Equal(
        "No key fits the sopranos: the pattern spans 19 semitones, and 17 are allowed to them.",
        Assert.Single(Build("1 3 5 8 10 12", new() { Limit = "soprano" }).Reasons));

    [Fact]
    public void An_unknown_limit_names_those_that_there_are() => Assert.Equal(
        "No key: no part or group is called 'altoes'; write everyone, any, or one of soprano, alto, tenor, bass, everyone, women, upper, men.",
        Assert.Single(Build(Samples.FiveNotes, new() { Limit = "altoes" }).Reasons));

    [Fact]
    public void Body_and_breathing_have_no_keys()
    {
        Exercise breathing = Samples.Exercise("1") with { Pattern = null, Phases = [new(BreathAction.In, 4, "")] };

        KeyLadder ladder = LadderBuilder.Build(breathing, Samples.Choir(), new());

        Assert.Empty(ladder.Rungs);
        Assert.Empty(ladder.Reasons);
    }

    private static KeyLadder Build(string pattern, LadderSpec spec) =>
        LadderBuilder.Build(Samples.Exercise(pattern), [.. Samples.Choir().Select((part, i) => i == 0 ? part with { Groups = [.. part.Groups, "upper"] } : part)], spec);

    private static string Keys(string pattern, LadderSpec spec) => Keys(Build(pattern, spec));

    private static string Keys(KeyLadder ladder) => string.Join(' ', ladder.Rungs.Select(rung => rung.Tonic.Name));

    private static string Top(LadderSpec spec) => Build(Samples.FiveNotes, spec).Rungs.MaxBy(rung => rung.Tonic.Midi)!.Tonic.Name;

    private static string Sung(KeyLadder ladder, string part) =>
        string.Join(' ', ladder.Rungs.Where(rung => rung.Parts.Single(p => p.Part.Id == part).Sings).Select(rung => rung.Tonic.Name));
}
