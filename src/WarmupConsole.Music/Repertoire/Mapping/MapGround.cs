namespace WarmupConsole.Music.Repertoire.Mapping;

/// <summary>Why a line of a score is taken for a part of the choir, or for none.</summary>
public enum MapGround
{
    /// <summary>The score names it as the choir names its part, or by a usual word for that voice.</summary>
    Name,

    /// <summary>Its clef, and where most of its notes lie.</summary>
    ClefAndTessitura,

    /// <summary>Its name is that of an instrument, or it has several staves or chords and no words.</summary>
    Accompaniment,

    /// <summary>The director said so.</summary>
    Director,
}
