using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Repertoire.Places;

/// <summary>The tones of each voice of a line, one after another. Grace notes have no time of their own and are left out.</summary>
public static class SungTones
{
    /// <summary>More voices than this in one part are no voices: the rest are taken together.</summary>
    private const int MostVoices = 32;

    /// <summary>A list for each voice, in the order in which they first come.</summary>
    /// <param name="notes">Notes of one line.</param>
    /// <param name="clock">When the bars sound.</param>
    public static IReadOnlyList<IReadOnlyList<SungTone>> Of(IEnumerable<PartNote> notes, ScoreClock clock)
    {
        ArgumentNullException.ThrowIfNull(notes);
        ArgumentNullException.ThrowIfNull(clock);
        Dictionary<(int, string), int> numbers = [];
        return [.. notes.Where(note => !note.Is(NoteTraits.Grace)).GroupBy(Number).Select(voice => Chain(voice, clock))];

        int Number(PartNote note)
        {
            (int, string) voice = (note.Staff, note.Voice);
            return numbers.TryGetValue(voice, out int known) ? known : numbers[voice] = Math.Min(numbers.Count, MostVoices - 1);
        }
    }

    private static List<SungTone> Chain(IEnumerable<PartNote> voice, ScoreClock clock)
    {
        List<SungTone> tones = [];
        foreach ((int place, PartNote note) in voice.SelectMany(note => clock.PlacesOf(note.Bar).Select(place => (place, note))).OrderBy(sung => sung.place).ThenBy(sung => sung.note.Offset))
        {
            Add(tones, note, clock.BeatsAt(place, note.Offset), (clock.SecondsAt(place, note.Offset), clock.SecondsAt(place, note.Offset + note.Length)));
        }

        return tones;
    }

    private static void Add(List<SungTone> tones, PartNote note, Beats start, (double Start, double End) seconds)
    {
        bool breath = note.Is(NoteTraits.BreathAfter);
        if (tones is [.., var last] && start < last.End)
        {
            // Beside the one before: a chord member, or the tied member of a chord that was carried on already.
            tones[^1] = last with { Low = Lower(last.Low, note.Pitch), High = Higher(last.High, note.Pitch), BreathAfter = last.BreathAfter || breath };
        }
        else if (tones is [.., var before] && note.Is(NoteTraits.TieStop) && start == before.End && before.Low.Midi <= note.Midi && note.Midi <= before.High.Midi)
        {
            tones[^1] = before with { Length = before.Length + note.Length, Seconds = seconds.End - before.StartSeconds, BreathAfter = breath };
        }
        else
        {
            bool isNew = note.Lyric.Length > 0;
            string lyric = isNew || tones.Count == 0 ? note.Lyric : tones[^1].Lyric;
            tones.Add(new(note.Bar, start, note.Length, seconds.Start, seconds.End - seconds.Start, note.Pitch, note.Pitch, note.Loudness, lyric, isNew, breath));
        }
    }

    private static Pitch Lower(Pitch a, Pitch b) => a.Midi <= b.Midi ? a : b;

    private static Pitch Higher(Pitch a, Pitch b) => a.Midi >= b.Midi ? a : b;
}
