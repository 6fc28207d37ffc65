using System.Globalization;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules;

/// <summary>
/// Hours between a session and a match or another session, whole ones rounded down. Where only the slot of a session is known its
/// usual start is taken; where a kick-off is not known whole days are, a match's end being two hours later.
/// </summary>
internal readonly record struct HoursApart(int Count, bool IsEstimated)
{
    /// <summary>From the start of a session, or so many minutes into it, to the kick-off of a match.</summary>
    public static HoursApart Before(Session session, Match match, int minutes = 0) => match.KickOff is { } kickOff
        ? new(Down(Minute(match.Day!.Value, kickOff) - Minute(session.Day, session.Begins) - minutes), session.Start is null)
        : new(Down(Day * (match.Day!.Value.DayNumber - session.Day.DayNumber) - minutes), IsEstimated: true);

    /// <summary>From the end of a match to the start of a session.</summary>
    public static HoursApart After(Match match, Session session) => match.KickOff is { } kickOff
        ? new(Math.Max(0, Down(Minute(session.Day, session.Begins) - Minute(match.Day!.Value, kickOff) - 60 * MatchGap.HoursOfMatch)), session.Start is null)
        : new(Math.Max(0, 24 * (session.Day.DayNumber - match.Day!.Value.DayNumber) - MatchGap.HoursOfMatch), IsEstimated: true);

    /// <summary>From the start of a session to the start of a later one.</summary>
    public static HoursApart Of(Session first, Session second) =>
        new(Down(Minute(second.Day, second.Begins) - Minute(first.Day, first.Begins)), first.Start is null || second.Start is null);

    /// <summary>From the end of a session to the start of a later one; 0 where it begins before that.</summary>
    public static HoursApart Gap(Session first, Session second) =>
        new(Math.Max(0, Down(Minute(second.Day, second.Begins) - Minute(first.Day, first.Begins) - first.Minutes.Value)), first.Start is null || second.Start is null);

    /// <summary>"46", or "about 46".</summary>
    public override string ToString() => IsEstimated ? RuleWords.Say("hours.about", Count) : Count.ToString(CultureInfo.InvariantCulture);

    private const int Day = 24 * 60;

    private static int Minute(DateOnly day, TimeOnly at) => Day * day.DayNumber + (int)at.ToTimeSpan().TotalMinutes;

    private static int Down(int minutes) => (int)Math.Floor(minutes / 60d);
}
