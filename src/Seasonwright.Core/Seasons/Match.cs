using Seasonwright.Core.Calendar;

namespace Seasonwright.Core.Seasons;

public enum Venue
{
    Home,
    Away,
    Neutral,
}

public enum Importance
{
    Friendly,
    Regular,

    /// <summary>Planned for. Never on posters or shares unless switched on.</summary>
    Key,
}

public enum MatchStatus
{
    Confirmed,

    /// <summary>The day may still change.</summary>
    Provisional,

    /// <summary>Played only if something else happens first.</summary>
    Conditional,

    /// <summary>Some day of a span, for instance "week of 6 December".</summary>
    Window,

    /// <summary>Was planned and has no new date: not a match day.</summary>
    Postponed,

    /// <summary>Will not be played; kept in sight.</summary>
    Cancelled,
}

public enum Outcome
{
    Won,
    Lost,
}

/// <summary>A match of this team.</summary>
/// <param name="Day">The venue's date; null when not known.</param>
/// <param name="LastDay">The last possible day of a window, inside it; null for one day.</param>
/// <param name="KickOff">The venue's clock; null is normal: time unknown.</param>
/// <param name="Zone">IANA zone of the venue; null for the team's own.</param>
/// <param name="Opponent">As written, or null while unknown.</param>
/// <param name="Venue">Null while unknown.</param>
/// <param name="Condition">What must happen first; only for conditional matches.</param>
/// <param name="Series">Its place in a best-of series.</param>
/// <param name="Result">Ours first, for instance "31-24".</param>
/// <param name="Outcome">Won or lost, once the coach said so; it settles the matches that wait for it.</param>
/// <param name="Source">Where an imported match came from.</param>
public sealed record Match(
    MatchId Id,
    DateOnly? Day,
    DateOnly? LastDay = null,
    TimeOnly? KickOff = null,
    string? Zone = null,
    string? Opponent = null,
    Venue? Venue = null,
    string? Competition = null,
    string? Round = null,
    string? Place = null,
    Importance Importance = Importance.Regular,
    MatchStatus Status = MatchStatus.Confirmed,
    Condition? Condition = null,
    Series? Series = null,
    string? Result = null,
    Outcome? Outcome = null,
    string? Note = null,
    MatchSource? Source = null)
{
    /// <summary>The day or window it may be played on; null when unknown. A last day before the first counts for nothing.</summary>
    public DaySpan? Days => Day is { } first ? new DaySpan(first, LastDay is { } last && last > first ? last : first) : null;

    /// <summary>Whether this match makes its day a match day: it has one single day and has not been called off.</summary>
    public bool IsOnOneDay => Day is not null && (LastDay is null || LastDay == Day) && !IsOff;

    public bool IsOff => Status is MatchStatus.Postponed or MatchStatus.Cancelled;

    /// <summary>The match once it is not played: it waits for nothing any more, so that no result brings it back.</summary>
    public Match CalledOff() => this with { Status = MatchStatus.Cancelled, Condition = null };

    /// <summary>Official matches count for the competition phase; friendlies do not.</summary>
    public bool IsOfficial => Importance != Importance.Friendly && !IsOff;

    /// <summary>The match as its list last had it; as it stands where no list has it otherwise.</summary>
    public Match AsListed() => Source is { Listed: { } listed } source ? listed.On(this) with { Source = source with { Listed = null } } : this;

    /// <summary>This match, which remembers how a list has it wherever it stands otherwise.</summary>
    /// <param name="listed">The match as the list has it, with its source.</param>
    public Match ListedAs(Match listed)
    {
        var said = Listing.Of(listed);
        return this with { Source = (Source ?? listed.Source ?? new MatchSource()) with { Listed = said == Listing.Of(this) ? null : said } };
    }
}

/// <summary>What a conditional match waits for.</summary>
/// <param name="On">The match that decides, or null when it is said in words only.</param>
/// <param name="Needs">The outcome of that match under which this one is played.</param>
/// <param name="Words">As the list says it, for instance "if needed".</param>
public sealed record Condition(MatchId? On = null, Outcome Needs = Outcome.Won, string? Words = null);

/// <summary>A best-of series, for instance game 2 of a best of 3.</summary>
/// <param name="Name">Joins the games of one series.</param>
/// <param name="Game">1 to <paramref name="BestOf"/>.</param>
/// <param name="BestOf">An odd number, 3 to 9.</param>
public sealed record Series(string Name, int Game, int BestOf);

/// <summary>Where an imported match came from.</summary>
/// <param name="Id">The list's own number or UID, if it has one.</param>
/// <param name="Vanished">The last list read no longer holds the match. It is marked, never deleted.</param>
/// <param name="Listed">What the list last said; null where the match stands as listed.</param>
public sealed record MatchSource(string? Id = null, bool Vanished = false, Listing? Listed = null);
