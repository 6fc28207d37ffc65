namespace Seasonwright.Documents.Read;

/// <summary>The kinds of change, the weightiest first.</summary>
public enum ChangeKind
{
    Added,

    /// <summary>No longer in the list: marked, never deleted.</summary>
    Vanished,
    Postponed,
    Cancelled,

    /// <summary>Another day.</summary>
    Moved,
    VenueSwapped,

    /// <summary>Another kick-off on the same day.</summary>
    Time,

    /// <summary>A kick-off where there was none.</summary>
    TimeKnown,

    /// <summary>Something else differs.</summary>
    Changed,
    Unchanged,

    /// <summary>Nothing is written before an answer.</summary>
    Asked,
}
