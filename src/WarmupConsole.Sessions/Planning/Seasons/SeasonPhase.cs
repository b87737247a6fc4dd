namespace WarmupConsole.Sessions.Planning.Seasons;

/// <summary>Where a day lies in the way to a concert.</summary>
public enum SeasonPhase
{
    /// <summary>No concert is near.</summary>
    Free,

    /// <summary>In the last twelve weeks before a concert: reach and difficulty grow.</summary>
    Growing,

    /// <summary>In the week that ends with a concert: nothing new, nothing at the edge.</summary>
    ConcertWeek,
}
