namespace Seasonwright.Store.Log;

/// <summary>What a stream of the log is about. The names are stored as text: rename none.</summary>
public enum StreamKind
{
    /// <summary>One season of one team.</summary>
    Season,

    /// <summary>A team's setup.</summary>
    Team,

    /// <summary>What the club's teams share: facilities, room plan.</summary>
    Club,
}
