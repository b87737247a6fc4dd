using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Hearing;
using WarmupConsole.Music.Scales;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Tests.Sessions.Live;

namespace WarmupConsole.Tests.Music.Hearing;

/// <summary>Keys recognised from what is played, with figures.</summary>
public sealed class KeyHearingTests(ITestOutputHelper output)
{
    private const int Rungs = 1000;
    private const int Keys = 12;

    private static readonly Exercise[] Sung =
        [.. Catalogue.Exercises.Where(exercise => exercise.IsSung && exercise.Pattern!.Notes.Count(note => note.Degree is not null) >= 4).Where((_, index) => index % 7 == 0)];

    /// <summary>Each note: wrong once in 25, and as often one too many or one left out.</summary>
    [Fact]
    public void In_at_least_98_of_100_rungs_played_unevenly_the_key_is_right()
    {
        (int right, int rungs) = (0, 0);
        for (int seed = 0; rungs < Rungs; seed++)
        {
            UnevenPianist pianist = new(seed, 0.04);
            Exercise exercise = Sung[seed % Sung.Length];
            KeyHearing ear = KeyHearing.Begin(exercise);
            (int? heard, int? before, int tonic) = (null, null, 60);
            for (int key = 0; key < Keys && rungs < Rungs; key++, rungs++)
            {
                foreach (int midi in pianist.Play(exercise, before, tonic))
                {
                    (ear, int? told) = ear.After(midi, Expected(heard));
                    heard = told ?? heard;
                }

                right += heard == tonic % Keys ? 1 : 0;
                (before, tonic) = (tonic, pianist.Next(tonic, tonic + 1, tonic - 1));
            }
        }

        output.WriteLine($"right key in {right} of {rungs} rungs, over {Sung.Length} exercises");
        Assert.True(right >= 0.98 * rungs, $"Only {right} of {rungs} rungs were recognised.");
    }

    /// <summary>In every place of a rung, every wrong note, in the place of the right one or before it.</summary>
    [Fact]
    public void No_single_wrong_note_ever_changes_the_key()
    {
        int tried = 0;
        foreach (Exercise exercise in Sung)
        {
            int[] played = [48, 60, 60 + ModeData.Semitones(exercise.Mode, 3), 67, .. Pattern(exercise)];
            for (int place = 4; place < played.Length; place++)
            {
                foreach (int wrong in Enumerable.Range(54, 24).Where(midi => midi != played[place]))
                {
                    Assert.All(Heard(exercise, [.. played[..place], wrong, .. played[(place + 1)..]]), tonic => Assert.Equal(0, tonic));
                    Assert.All(Heard(exercise, [.. played[..place], wrong, .. played[place..]]), tonic => Assert.Equal(0, tonic));
                    tried += 2;
                }
            }

            foreach (int stray in Enumerable.Range(54, 24))
            {
                Assert.All(Heard(exercise, [.. played, stray]), tonic => Assert.Equal(0, tonic));
                tried++;
            }
        }

        output.WriteLine($"{tried} single wrong notes, no key changed");
        Assert.True(tried > 3000);
    }

    [Fact]
    public void The_same_key_again_is_recognised_by_its_pattern_and_a_closing_chord_is_not()
    {
        Exercise exercise = LiveFixtures.Scale;
        int[] once = [48, 60, 64, 67, .. Pattern(exercise)];
        Assert.Equal([0], Heard(exercise, once));
        Assert.Equal([0], Heard(exercise, [.. once, 48, 60, 64, 67]));
        Assert.Equal([0, 0], Heard(exercise, [.. once, .. once]));
    }

    [Fact]
    public void Somebody_who_plays_anything_at_all_seldom_moves_the_key()
    {
        Random random = new(11);
        Exercise exercise = Sung[0];
        int[] once = [48, 60, 60 + ModeData.Semitones(exercise.Mode, 3), 67, .. Pattern(exercise)];
        int moved = Enumerable.Range(0, 100).Sum(_ => Heard(exercise, [.. once, .. Enumerable.Range(0, 30).Select(_ => random.Next(40, 90))]).Count(tonic => tonic != 0));
        output.WriteLine($"{moved} moves in 3000 random notes");
        Assert.True(moved <= 60, $"{moved} moves in 3000 random notes");
    }

    private static List<int> Heard(Exercise exercise, int[] played)
    {
        KeyHearing ear = KeyHearing.Begin(exercise);
        List<int> heard = [];
        foreach (int midi in played)
        {
            (ear, int? tonic) = ear.After(midi, Expected(heard.Count > 0 ? heard[^1] : null));
            if (tonic is { } key)
            {
                heard.Add(key);
            }
        }

        return heard;
    }

    private static KeyExpectation Expected(int? present) => present is { } key ? new(key, (key + 1) % Keys, (key + Keys - 1) % Keys) : new(null, 0, null);

    private static IEnumerable<int> Pattern(Exercise exercise) =>
        exercise.Pattern!.Notes.Where(note => note.Degree is not null).Select(note => 60 + ModeData.IntervalOf(exercise.Mode, note.Degree!.Value).Semitones);
}
