using System.Collections.Frozen;

namespace WarmupConsole.Music.Repertoire.Mapping;

/// <summary>
/// One row per usual voice, with the words that scores name it by, and the words that name an accompaniment. English, German, Italian,
/// French and Latin as scores are printed (common practice).
/// </summary>
internal static class PartNameData
{
    private static readonly (VoiceClass[] Classes, string Words)[] Voices =
    [
        ([VoiceClass.Soprano], "s sop soprano sopranos soprani sopran soprane treble trebles discant descant discantus cantus canto superius dessus"),
        ([VoiceClass.Alto], "a alt alto altos alti altus contralto contraltos contralti countertenor contratenor"),
        ([VoiceClass.Tenor], "t ten tenor tenors tenore tenori taille"),
        ([VoiceClass.Bass], "b bas bass basses basso bassi bassus basse baritone baritones bariton barytone baritono"),
        ([VoiceClass.Soprano, VoiceClass.Alto], "sa women frauen damen frauenstimmen femmes donne"),
        ([VoiceClass.Tenor, VoiceClass.Bass], "tb men maenner manner herren mannerstimmen hommes uomini"),
        ([VoiceClass.Soprano, VoiceClass.Alto, VoiceClass.Tenor, VoiceClass.Bass], "satb"),
    ];

    private const string Keyboards =
        """
        piano pianoforte pno pf klavier clavier organ organo orgel orgue org keyboard keyboards harpsichord cembalo continuo
        accompaniment accomp acc accompagnement begleitung reduction auszug klavierauszug rehearsal practice
        """;

    private const string Instruments =
        """
        harp harfe arpa guitar guitars gitarre chitarra violin violins violine violinen violino violini viola violas viole violoncello violoncelli cello cellos contrabass contrabasso
        kontrabass strings string streicher flute flutes flauto floete flote oboe oboes oboi clarinet clarinets clarinetto klarinette bassoon
        bassoons fagott fagotto horn horns corno corni trumpet trumpets tromba trombe trompete trombone trombones tromboni posaune tuba
        timpani pauken percussion schlagzeug drum drums drumset cymbals bells handbells glockenspiel xylophone celesta recorder blockflote
        saxophone sax piccolo orchestra orchester brass woodwinds synth synthesizer ukulele banjo mandolin accordion click metronome
        """;

    private static readonly FrozenDictionary<string, VoiceClass[]> ByWord = Voices
        .SelectMany(row => row.Words.Split(' ').Select(word => (word, row.Classes)))
        .ToFrozenDictionary(row => row.word, row => row.Classes);

    private static readonly FrozenSet<string> OfKeyboards = Words(Keyboards);
    private static readonly FrozenSet<string> OfInstruments = Words(Instruments);

    /// <summary>The voices a word stands for, from high to low; none for other words.</summary>
    internal static IReadOnlyList<VoiceClass> Classes(string word) => ByWord.GetValueOrDefault(word, []);

    internal static bool IsInstrument(string word) => IsKeyboard(word) || OfInstruments.Contains(word);

    internal static bool IsKeyboard(string word) => OfKeyboards.Contains(word);

    private static FrozenSet<string> Words(string text) => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).ToFrozenSet();
}
