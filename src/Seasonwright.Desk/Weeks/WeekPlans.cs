using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Solver;

namespace Seasonwright.Desk.Weeks;

/// <summary>What the engine says of a week: a proposal, what keeps a session from a place, and what gives way when a day changes.</summary>
public static class WeekPlans
{
    /// <summary>What gives way goes so many days at most: whoever plans the day looks at the two on either side. Common practice, no source.</summary>
    private const int Near = 2;

    /// <summary>The rest of a week from today on, laid out anew.</summary>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ProposedLayout Propose(Season season, Setup setup, SeasonWeek week, DateOnly today, CancellationToken cancel = default)
    {
        var proposal = WeekProposals.Of(WeekProblem.Of(season, setup, week, today), cancel);
        var ids = new NaturalIds(season.Id);
        var edits = WeekEdits.Of(season, setup, proposal, (kind, key) => ids.Of(kind, key));
        var practices = proposal.Problem.Given.Where(session => session.IsAssumed && !proposal.Problem.Days[session.Day].IsPast).Select(session => (Session: session, Day: proposal.Problem.Days[session.Day].Date))
            .Select((one, at) => (SeasonEdit)new SetSession(new Session(ids.Session(season, _ => false, "practice", $"{one.Day:yyyy-MM-dd}", $"{one.Session.Slot}", at.ToString(CultureInfo.InvariantCulture)), one.Day, one.Session.Slot, SessionKind.Practice, new Minutes(one.Session.Minutes), new Rpe(one.Session.Rpe)))).ToValueList();
        return new(proposal, edits, practices, Decider.After(season, [.. edits, .. practices]));
    }

    /// <summary>What keeps one of our sessions from a place in any week of the season, for whomever it is; nothing for one that is not ours to place.</summary>
    /// <param name="moved">As it would lie there.</param>
    public static ValueList<WeekReason> WhyNot(Season season, Setup setup, DateOnly today, Session moved)
    {
        // What cannot be done at all is refused when it is tried.
        if (season.WeekOf(moved.Day) is not { } week || Decider.Decide(season, new SetSession(moved)) is not Accepted accepted) return [];
        return Against(Views(season.With(accepted.Step), setup, week, today, moved.Groups), moved.Id, moved.Day.DayNumber - week.Days.First.DayNumber, moved.Slot);
    }

    /// <summary>
    /// Our sessions that cannot stay where they are, for instance since practice moved onto their day: each with why, and where it goes. The hardest first: shorter where that is enough, else to the
    /// nearest place within two days that nothing keeps it from; where there is none it does not take place. Those of a group give way for what the group does.
    /// </summary>
    public static ValueList<GivenWay> GivesWay(Season season, Setup setup, SeasonWeek week, DateOnly today)
    {
        List<GivenWay> given = [];
        if (season.IsLocked(week.Id)) return given.ToValueList();
        var now = season;
        while (Troubled(now, setup, week, today).FirstOrDefault(one => given.TrueForAll(known => known.Was.Id != one.Was.Id)) is { Was: { } was, Views: { } views, Why: { } why })
        {
            var place = Places(week, today, was).FirstOrDefault(place => Against(views, was.Id, place.Day.DayNumber - week.Days.First.DayNumber, place.Slot).Count == 0);
            var gone = Shorter(was).FirstOrDefault(shorter => WhyNot(now, setup, today, shorter).Count == 0)
                ?? (place == default ? was with { IsCancelled = true } : was.MovedTo(place.Day, place.Slot));
            given.Add(new(was, gone, why));
            now = Decider.After(now, [new SetSession(gone)]);
        }
        return given.ToValueList();
    }

    private static IEnumerable<(Session Was, List<WeekProposal> Views, ValueList<WeekReason> Why)> Troubled(Season season, Setup setup, SeasonWeek week, DateOnly today) =>
        from whose in season.SessionsIn(week).Where(session => session.IsOurs).GroupBy(session => session.Groups)
        let views = Views(season, setup, week, today, whose.Key)
        from session in whose
        let placed = views.SelectMany(view => view.Sessions).FirstOrDefault(one => one.Id == session.Id)
        where placed is not null
        let why = Against(views, session.Id, placed.Day, placed.Slot)
        where why.Count > 0
        orderby placed.Au descending
        select (session, views, why);

    /// <summary>What keeps a session from a place in the week of anybody who does it.</summary>
    private static ValueList<WeekReason> Against(List<WeekProposal> views, SessionId session, int day, DaySlot slot) =>
        views.SelectMany(view => view.Sessions.FirstOrDefault(one => one.Id == session) is { } placed ? WeekProposals.WhyNot(view, placed, day, slot) : []).Distinct().ToValueList();

    /// <summary>The same session in fewer minutes, by fives, down to two thirds: what is left is still that session. Common practice, no source.</summary>
    private static IEnumerable<Session> Shorter(Session session) =>
        from minutes in Enumerable.Range(1, session.Minutes.Value / 15).Select(fives => session.Minutes.Value - 5 * fives)
        where minutes >= Session.LeastMinutes && 3 * minutes >= 2 * session.Minutes.Value
        select session with { Minutes = new(minutes) };

    private static IEnumerable<(DateOnly Day, DaySlot Slot)> Places(SeasonWeek week, DateOnly today, Session session) =>
        from day in week.Days.Days()
        let away = Math.Abs(day.DayNumber - session.Day.DayNumber)
        where away <= Near && day >= today
        from slot in Enum.GetValues<DaySlot>()
        orderby away, slot != session.Slot, day, slot
        select (day, slot);

    /// <summary>The week as it stands, as if it had been proposed so: of the main body, or of each group that a session is for.</summary>
    private static List<WeekProposal> Views(Season season, Setup setup, SeasonWeek week, DateOnly today, ValueList<GroupId>? groups) =>
    [
        .. from whose in groups is null ? [null] : groups.Select(one => (GroupId?)one)
           let problem = WeekProblem.Of(season, setup, week, today, whose)
           select new WeekProposal(problem, problem.Standing, [], [], 0, 0, true, []),
    ];
}

/// <summary>A week laid out by the engine.</summary>
/// <param name="Edits">That make the season so; none where it is.</param>
/// <param name="Practices">That put the practices whose days were assumed on those days; none where they are known.</param>
/// <param name="Season">With all of them.</param>
public sealed record ProposedLayout(WeekProposal Proposal, ValueList<SeasonEdit> Edits, ValueList<SeasonEdit> Practices, Season Season);

/// <summary>A session that gives way.</summary>
/// <param name="Now">Shorter, elsewhere, or cancelled.</param>
/// <param name="Why">What keeps it from where it was.</param>
public sealed record GivenWay(Session Was, Session Now, ValueList<WeekReason> Why);
