namespace Seasonwright.Core.Seasons;

/// <summary>What a list last said of a match that now stands otherwise. The next state of the list is compared with it, so that only what the list says anew changes the match.</summary>
/// <param name="Day">The day, or the first possible one.</param>
/// <param name="LastDay">The last possible day of a window.</param>
/// <param name="KickOff">The venue's clock.</param>
/// <param name="Result">Ours first.</param>
public sealed record Listing(
    DateOnly? Day,
    DateOnly? LastDay = null,
    TimeOnly? KickOff = null,
    string? Opponent = null,
    Venue? Venue = null,
    string? Competition = null,
    string? Round = null,
    string? Place = null,
    MatchStatus Status = MatchStatus.Confirmed,
    Series? Series = null,
    string? Result = null)
{
    internal static Listing Of(Match match) => new(
        match.Day, match.LastDay, match.KickOff, match.Opponent, match.Venue, match.Competition, match.Round, match.Place, match.Status, match.Series, match.Result);

    /// <summary>The match with what was said of it.</summary>
    internal Match On(Match match) => match with
    {
        Day = Day,
        LastDay = LastDay,
        KickOff = KickOff,
        Opponent = Opponent,
        Venue = Venue,
        Competition = Competition,
        Round = Round,
        Place = Place,
        Status = Status,
        Series = Series,
        Result = Result,
    };
}
