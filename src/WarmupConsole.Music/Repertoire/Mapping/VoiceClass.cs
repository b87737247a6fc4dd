namespace WarmupConsole.Music.Repertoire.Mapping;

/// <summary>The four usual voices, from the highest to the lowest.</summary>
public enum VoiceClass
{
    Soprano,
    Alto,
    Tenor,
    Bass,
}
