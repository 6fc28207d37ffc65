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
    /// <summary>Whether the season is to be changed for it; an unchanged match may still have to remember what the list says now.</summary>
    public bool IsWritten => Match is not null && (Kind != ChangeKind.Unchanged || Match.Source?.Listed != Known?.Source?.Listed);
}
