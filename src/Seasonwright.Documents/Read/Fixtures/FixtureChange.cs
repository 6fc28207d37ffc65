using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>What a list does to one match.</summary>
/// <param name="Kind">The weightiest of the differences.</param>
/// <param name="Row">The list's row; null for a vanished match.</param>
/// <param name="Known">The match as it was; null for an added one.</param>
/// <param name="Match">The match as it shall be, without an id of its own if it is added; null while nothing may be written.</param>
/// <param name="Fields">What differs, field by field.</param>
/// <param name="Ask">Ids of open questions of the comparison.</param>
public sealed record FixtureChange(ChangeKind Kind, FixtureRow? Row, Match? Known, Match? Match, ValueList<FieldChange> Fields, ValueList<string> Ask)
{
    /// <summary>Whether the season is to be changed for it.</summary>
    public bool IsWritten => Match is not null && Kind != ChangeKind.Unchanged;
}

/// <summary>One field of a match before and after, as texts; empty for not known.</summary>
/// <param name="Field">day, lastDay, kickOff, opponent, venue, competition, round, place, status, condition, series, result or source.</param>
public sealed record FieldChange(string Field, string Before, string After);

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
