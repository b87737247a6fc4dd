using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Tests.Music.Hearing;

/// <summary>
/// Somebody who leads at the piano with one hand and less than all attention, the same way for the same seed: cue chords of all kinds,
/// rolled, without bass, or none; the pattern alone or with a left hand; wrong notes, notes too many, notes left out.
/// </summary>
internal sealed class UnevenPianist(int seed, double slips)
{
    private static readonly int[] Seventh = [7, 11, 14, 17];

    private readonly Random _random = new(seed);

    /// <summary>The next tonic: mostly on along the ladder, sometimes again, back, or anywhere.</summary>
    internal int Next(int present, int next, int back) => _random.NextDouble() switch
    {
        < 0.86 => next,
        < 0.91 => present,
        < 0.96 => back,
        _ => 55 + _random.Next(12),
    };

    /// <summary>One key, as MIDI numbers in the order in which they are struck.</summary>
    internal IReadOnlyList<int> Play(Exercise exercise, int? before, int tonic)
    {
        List<int> notes = [];
        int third = ModeData.Semitones(exercise.Mode, 3);
        double cue = _random.NextDouble();
        if (cue < 0.2 && before is { } old && old != tonic)
        {
            Chord(notes, old, [0, third, 7]); // the old key, its neighbour's dominant, the new key
        }

        if (cue < 0.55)
        {
            Chord(notes, tonic, Seventh);
        }

        if (cue < 0.92)
        {
            Chord(notes, tonic, [0, third, 7]);
        }

        bool hasLeftHand = _random.NextDouble() < 0.3;
        foreach (PatternNote note in exercise.Pattern!.Notes.Where(note => note.Degree is not null))
        {
            if (hasLeftHand && _random.NextDouble() < 0.3)
            {
                notes.Add(Slipped(tonic - 12 + new[] { 0, third, 7 }[_random.Next(3)]));
            }

            Strike(notes, tonic + ModeData.IntervalOf(exercise.Mode, note.Degree!.Value).Semitones);
        }

        return notes;
    }

    /// <summary>Rolled in any order, often without its bass, sometimes with a tone doubled.</summary>
    private void Chord(List<int> notes, int tonic, int[] tones)
    {
        List<int> chord = [.. tones.Select(tone => tonic + tone)];
        if (_random.NextDouble() < 0.5)
        {
            chord.Insert(0, tonic + tones[0] - 12);
        }
        else if (_random.NextDouble() < 0.3)
        {
            chord.RemoveAt(0);
        }

        if (_random.NextDouble() < 0.5)
        {
            _random.Shuffle(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(chord));
        }

        chord.ForEach(note => Strike(notes, note));
    }

    private void Strike(List<int> notes, int midi)
    {
        if (_random.NextDouble() < slips / 2)
        {
            return;
        }

        if (_random.NextDouble() < slips / 2)
        {
            notes.Add(midi + _random.Next(-3, 4));
        }

        notes.Add(Slipped(midi));
    }

    private int Slipped(int midi) => _random.NextDouble() < slips ? midi + (_random.Next(2) == 0 ? 1 : -1) * (1 + _random.Next(2)) : midi;
}
