using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Repertoire.Mapping;

/// <summary>Finds the part of the choir for each sung line: by its name, else by clef and tessitura, which for as many lines as parts means their order.</summary>
internal sealed class SingerGuess(IReadOnlyList<Part> parts)
{
    private readonly Dictionary<Part, NamedVoice> names = parts.ToDictionary(part => part, part => NamedVoice.Of($"{part.Name} {part.Id}"));

    internal IReadOnlyList<LineSinger> For(IReadOnlyList<ScoreLine> lines)
    {
        LineSinger?[] known = [.. lines.Select(ByName)];
        bool areInOrder = lines.Count == parts.Count && Array.TrueForAll(known, singer => singer is null) && Descend(lines);
        return [.. lines.Select((line, index) => known[index]
            ?? new(line, areInOrder ? parts[index] : Tessitura.Of(line.Notes).Nearest(parts, line.Part.Clefs), MapGround.ClefAndTessitura))];
    }

    private static bool Descend(IReadOnlyList<ScoreLine> lines)
    {
        double[] middles = [.. lines.Select(line => Tessitura.Of(line.Notes).Median)];
        return lines.All(line => line.Notes.Count > 0) && middles.Zip(middles.Skip(1)).All(pair => pair.First > pair.Second);
    }

    private LineSinger? ByName(ScoreLine line)
    {
        if (line.Voice.Length == 0 && parts.FirstOrDefault(part => IsCalled(part, line.Name)) is { } same)
        {
            return new(line, same, MapGround.Name);
        }

        NamedVoice name = NamedVoice.Of(line.Part.Name);
        IReadOnlyList<VoiceClass> wanted = line.Voice.Length == 0 ? name.Classes.Count == 1 ? name.Classes : [] : OfVoice(line, name);
        Part[] fitting = [.. parts.Where(part => names[part].Classes is [var only] && wanted.Contains(only))];
        Part[] counted = [.. fitting.Where(part => names[part].Number == name.Number)];
        Part[] meant = counted.Length > 0 ? counted : fitting;
        return meant.Length == 0 ? null : new(line, Tessitura.Of(line.Notes).Nearest(meant, line.Part.Clefs), MapGround.Name);
    }

    /// <summary>Of "SA" the upper voice is the soprano: as many voices as names, in the order of their height.</summary>
    private static IReadOnlyList<VoiceClass> OfVoice(ScoreLine line, NamedVoice name)
    {
        ScoreLine[] byHeight = [.. (line with { Voice = "", Notes = line.Part.Notes }).Voices()
            .OrderByDescending(voice => voice.Notes.Count).Take(name.Classes.Count).OrderByDescending(voice => Tessitura.Of(voice.Notes).Median)];
        int place = Array.FindIndex(byHeight, voice => voice.Voice == line.Voice);
        return byHeight.Length == name.Classes.Count && place >= 0 ? [name.Classes[place]] : name.Classes;
    }

    private static bool IsCalled(Part part, string name)
    {
        string typed = name.Trim().TrimEnd('.');
        return Is(part.Id, typed) || Is(part.Name, typed) || (typed.Length > 1 && part.Letters.Any(letter => Is(letter, typed)));
    }

    private static bool Is(string known, string typed) => string.Equals(known, typed, StringComparison.OrdinalIgnoreCase);
}
