using WarmupConsole.App.Running;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Tests.Sessions.Live;

namespace WarmupConsole.Tests.App.Running;

public class LineNotesTests
{
    public static TheoryData<string> InParts => [.. Catalogue.Exercises.Where(exercise => exercise.Voices.Count > 0).Select(exercise => exercise.Id)];

    [Theory]
    [MemberData(nameof(InParts))]
    public void All_parts_are_heard_where_they_have_lines_of_their_own(string id)
    {
        Exercise exercise = Catalogue.Exercises.Single(known => known.Id == id);
        Rung rung = WarmupBuilder.Alone(LiveFixtures.WithExtremes, exercise).Ladder.Rungs[0];
        HashSet<(int, Beats)> heard = [.. LineNotes.Of(exercise, rung).Select(note => (note.Midi, note.Start))];
        foreach (RungPart part in rung.Parts)
        {
            Beats start = Beats.Zero;
            foreach (PatternNote note in exercise.PatternFor(part.Part)!.Notes)
            {
                if (note.Degree is { } degree)
                {
                    int midi = rung.Tonic.Midi + ModeData.IntervalOf(rung.Mode, degree).Semitones + (12 * part.Octaves);
                    Assert.Contains((midi, start), heard);
                }

                start += note.Length;
            }
        }
    }
}
