using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>One of our matches as a list gives it. What the list does not say is null.</summary>
/// <param name="Line">Physical line where the row starts, 1 is the first.</param>
/// <param name="Day">The day, or the first possible one; null when not known or to be asked.</param>
/// <param name="LastDay">The last possible day of a window, inside it.</param>
/// <param name="KickOff">The venue's clock. No time means date only, never midnight.</param>
/// <param name="Opponent">As written, white space made one; never mended, never merged.</param>
/// <param name="Club">The name to show: <paramref name="Opponent"/>, or its first spelling once two have been answered to be one club.</param>
/// <param name="Venue">Null when not said.</param>
/// <param name="Status">Confirmed, provisional, conditional, window, postponed or cancelled.</param>
/// <param name="Result">Ours first, "31-24"; as written where the order is asked.</param>
/// <param name="Place">Hall or ground.</param>
/// <param name="Condition">What must happen first, in the list's words; only for conditional matches.</param>
/// <param name="Series">Its place in a best-of series.</param>
/// <param name="Remarks">The list's remarks.</param>
/// <param name="SourceId">The list's own number.</param>
/// <param name="NaturalKey">What makes it unique in the list, the same in later states of the list as far as it can be.</param>
/// <param name="Ask">Ids of the open questions this row needs answered before it may be written as certain.</param>
public sealed record FixtureRow(
    int Line,
    DateOnly? Day,
    DateOnly? LastDay,
    TimeOnly? KickOff,
    string? Opponent,
    string? Club,
    Venue? Venue,
    string? Competition,
    string? Round,
    MatchStatus Status,
    string? Result,
    string? Place,
    string? Condition,
    Series? Series,
    string? Remarks,
    string? SourceId,
    string NaturalKey,
    ValueList<string> Ask)
{
    /// <summary>Friendly where the competition says so; what is key only the coach knows.</summary>
    public Importance Importance => Competition is { } competition && ListWords.IsFriendly(competition) ? Importance.Friendly : Importance.Regular;
}
