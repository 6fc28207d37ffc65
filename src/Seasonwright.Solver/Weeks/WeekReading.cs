using System.Collections.Immutable;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Loads;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>Reads a week of a season for the week stage.</summary>
internal static class WeekReading
{
    /// <summary>sprint-exposure-gap, limit_days.</summary>
    private const int SprintDays = 10;

    /// <summary>So many days beside the week matter for what lies in it.</summary>
    private const int Beside = 3;

    /// <summary>Reads a week. Total: whatever season and setup hold, there is a problem; one that nothing is proposed for says why.</summary>
    /// <param name="from">Earlier days are facts.</param>
    /// <param name="group">As an athlete of this group has it; null for the main body, whom sessions of single groups do not concern.</param>
    public static WeekProblem Of(Season season, Setup setup, SeasonWeek week, DateOnly from, GroupId? group = null)
    {
        var (first, limits) = (week.Days.First, WeekLimits.Of(setup));
        var problem = Problem.Of(season, setup, Wishes.Of(season));
        var planned = problem.Weeks[week.Number - 1];
        var matches = season.AllMatches.Where(match => !match.IsOff && match.Days is not null).ToList();
        var open = matches.Where(match => !match.IsOnOneDay).ToList();
        ImmutableArray<DateOnly> matchDays = [.. matches.SelectMany(match => match.Days!.Value.Days()).Distinct().Order()];
        var days = DayLoad.Of(season, setup, week).Select((day, index) => new WeekDay(index, day.Day, MatchDay.Of(day.Day, matchDays), day.Match.Au,
            Left(season, day.Day), day.Day < from, TravelOf(season, limits, day.Day), open.Exists(match => match.Days!.Value.Contains(day.Day)), season.TestDays.Any(test => test.Day == day.Day))).ToValueList();
        var kind = season.KindOf(week.Id) ?? (planned.IsBreak ? WeekKind.Break : planned.Matches.Count switch { 0 => WeekKind.Building, 1 => WeekKind.Competition, _ => WeekKind.Congested });
        var phase = season.PhaseOf(week)?.Phase.Kind;
        var sessions = Mine(season, season.SessionsIn(week).Where(session => !session.IsCancelled), group).ToList();
        bool IsOpen(Session session) => session is { IsOurs: true, IsLocked: false } && session.Day >= from && session.Kind != SessionKind.Test;
        var (target, match) = (season.TargetOf(week.Id), days.Sum(day => day.MatchAu));
        var usual = season.PracticesOf(week.Id) is { } entered ? setup.UsualWeek.Practices.LoadOf(entered).Au : PracticeOf(season, problem, planned, kind, target);
        var slot = UsualSlot(season);
        var dated = sessions.Where(session => !session.IsOurs).Select(session => WeekSession.Of(session, setup, first)).ToList();
        var restBy = RestBy(season, limits, week, matchDays, group);
        if (!season.SessionsIn(week).Any(session => !session.IsOurs)) dated = AssumedPractices.Of(season, setup, week, days, usual, slot, limits, restBy);
        var around = Mine(season, season.AllSessions.Where(session => !session.IsCancelled && (session.Day < first && session.Day >= first.AddDays(-Beside) || session.Day > week.Days.Last && session.Day <= week.Days.Last.AddDays(Beside))), group);
        var given = dated.Concat(sessions.Where(session => session.IsOurs && !IsOpen(session)).Concat(around).Select(session => WeekSession.Of(session, setup, first))).ToValueList();
        var time = season.Brief.Time?.FirstOrDefault(time => time.Phase == phase) ?? (phase == PhaseKind.Peak ? season.Brief.Time?.FirstOrDefault(time => time.Phase == PhaseKind.Competition) : null);
        return new WeekProblem(
            days,
            given,
            TestsOf(season, week, sessions, first, from, slot).ToValueList(),
            sessions.Where(IsOpen).Select(session => WeekSession.Of(session, setup, first)).ToValueList(),
            matchDays.Select(day => day.DayNumber - first.DayNumber).Where(day => day is >= -Beside and < 0 || day >= days.Count && day < days.Count + Beside).ToValueList(),
            target is { } aim ? Math.Max(0, aim.Au - match - dated.Sum(session => session.Au)) : null,
            Asked(season, setup, week, kind, phase, planned),
            SessionRange.Kinds.ToValueList(),
            kind,
            phase,
            setup.ReferenceWeek.Au,
            time?.Hours * 60,
            time?.Days,
            restBy,
            limits,
            StopOf(season, week, days, kind))
        {
            PracticeSlot = slot,
            OpenMatches = open.Count(match => week.Days.Contains(match.Days!.Value.First)),
            IsBack = IsBack(season, problem, week, kind),
            SprintBy = SprintBy(season, first, group),
            RestFrom = RestFrom(season, limits, week, matchDays, group),
        };
    }

    /// <summary>
    /// What an athlete does: what is for everyone, and what is for the athlete's group. The main body does what is for everyone or for
    /// all groups; where practices are only for single groups it has those of the group with the most, for somebody stands for it.
    /// </summary>
    private static IEnumerable<Session> Mine(Season season, IEnumerable<Session> sessions, GroupId? group)
    {
        if (group is { } one) return sessions.Where(session => session.IsFor(one));
        var all = sessions.ToList();
        var groups = season.Groups.Select(line => line.Id).ToList();
        bool IsForAll(Session session) => session.Groups is null || groups.Count > 1 && groups.TrueForAll(session.IsFor);
        var most = all.Exists(session => !session.IsOurs && IsForAll(session)) ? null : all.Where(session => !session.IsOurs).SelectMany(session => session.Groups ?? []).Distinct()
            .OrderByDescending(one => all.Where(session => !session.IsOurs && session.IsFor(one)).Sum(session => session.Load.Au)).ThenBy(one => one.Text, StringComparer.Ordinal).Cast<GroupId?>().FirstOrDefault();
        return all.Where(session => IsForAll(session) || !session.IsOurs && most is { } whose && session.IsFor(whose));
    }

    /// <summary>The first week after a long absence, and any first week that is planned as one back.</summary>
    private static bool IsBack(Season season, Problem problem, SeasonWeek week, WeekKind kind) => WeeksBack.Of(problem)[week.Number - 1].Since == 0
        || kind == WeekKind.ReEntry && (week.Number == 1 || season.KindOf(season.Weeks[week.Number - 2].Id) != WeekKind.ReEntry);

    private static string? StopOf(Season season, SeasonWeek week, ValueList<WeekDay> days, WeekKind kind) =>
        season.IsLocked(week.Id) ? "stop.locked"
        : days.All(day => day.IsPast) ? "stop.past"
        : kind == WeekKind.Break ? "stop.off"
        : days.Where(day => !day.IsPast).All(day => day.IsClosed || day.IsMatch) ? days.Any(day => day.IsOpen) ? "stop.open" : "stop.closed"
        : null;

    /// <summary>Suggested practice where none is entered: the kind's share of the usual week, at most 72 % of the training.</summary>
    private static int PracticeOf(Season season, Problem problem, PlannedWeek week, WeekKind kind, Core.Quantities.Load? aim)
    {
        var before = week.Index > 0 ? season.KindOf(season.Weeks[week.Index - 1].Id) : null;
        var variant = kind is WeekKind.Introductory or WeekKind.ReEntry ? before == kind ? Variant.Second : Variant.First : Variant.None;
        var training = aim is { } target ? Math.Max(0, problem.Points.Of(target) - week.MatchPoints) : 1000;
        return problem.Points.ToLoad(KindTable.Practice(problem, week, kind, variant, training)).Au;
    }

    /// <summary>What the week's emphasis asks; where nobody said any, what its phase wishes, as far as its kind leaves room.</summary>
    private static ValueList<int> Asked(Season season, Setup setup, SeasonWeek week, WeekKind kind, PhaseKind? phase, PlannedWeek planned)
    {
        var asked = Enumerable.Range(0, (int)QualityKind.Prevention + 1)
            .Select(quality => Math.Min(3, setup.Qualities.Where(one => one.Kind == (QualityKind)quality).Sum(one => (int)season.EmphasisOf(week.Id, one.Id)))).ToValueList();
        if (asked.Any(level => level > 0)) return asked;
        var most = ExposureTable.Most(kind, planned.Matches.Count);
        return Enumerable.Range(0, (int)QualityKind.Prevention + 1)
            .Select(quality => !setup.Qualities.Any(one => one.Kind == (QualityKind)quality) ? 0 : quality == (int)QualityKind.Prevention ? 1
                : Math.Min(most[quality], ExposureTable.Wish(phase ?? PhaseKind.Competition, quality))).ToValueList();
    }

    private static IEnumerable<WeekSession> TestsOf(Season season, SeasonWeek week, List<Session> sessions, DateOnly first, DateOnly from, DaySlot practice)
    {
        foreach (var test in season.TestDays.Where(test => week.Days.Contains(test.Day) && test.Day >= from && test.For is null).DistinctBy(test => test.Day))
        {
            if (sessions.Exists(session => session.Kind == SessionKind.Test && session.Day == test.Day)) continue;
            var use = SessionUse.Of(SessionKind.Test);
            var slot = test.Part?.Contains("am", StringComparison.OrdinalIgnoreCase) == true ? DaySlot.Morning : WeekSlots.BeforePractice(practice);
            yield return new WeekSession(test.Day.DayNumber - first.DayNumber, slot, SessionKind.Test, use.Minutes.Value, use.Rpe.Value, Tested(test.Battery).ToValueList());
        }
    }

    /// <summary>What a test is an exposure of, by the words of its battery.</summary>
    private static IEnumerable<QualityKind> Tested(string battery)
    {
        bool Says(params string[] words) => words.Any(word => battery.Contains(word, StringComparison.OrdinalIgnoreCase));
        if (Says("strength", "1RM", "squat", "press", "pull")) yield return QualityKind.MaximumStrength;
        if (Says("jump", "CMJ", "throw")) yield return QualityKind.Power;
        if (Says("sprint", "speed")) yield return QualityKind.Speed;
    }

    /// <summary>The slot in which the season's practices mostly lie; evening where none is known.</summary>
    private static DaySlot UsualSlot(Season season) => season.AllSessions.Where(session => !session.IsOurs).GroupBy(session => session.Slot)
        .OrderByDescending(slot => slot.Count()).ThenByDescending(slot => slot.Key).Select(slot => (DaySlot?)slot.Key).FirstOrDefault() ?? DaySlot.Evening;

    /// <summary>full-rest-day-missing looks at so many days.</summary>
    private const int RestDays = 7;

    /// <summary>full-rest-day-missing, over the week's edge: where the days before are laid out, the next free day is due seven days after the last.</summary>
    private static int? RestBy(Season season, WeekLimits limits, SeasonWeek week, ImmutableArray<DateOnly> matchDays, GroupId? group) =>
        RestDays - 1 - Taken(season, limits, matchDays, group, back => week.Days.First.AddDays(-back));

    /// <summary>full-rest-day-missing, where the days after are laid out: the last free day is due at most seven days before the next one.</summary>
    private static int? RestFrom(Season season, WeekLimits limits, SeasonWeek week, ImmutableArray<DateOnly> matchDays, GroupId? group) =>
        Taken(season, limits, matchDays, group, week.Days.Last.AddDays) is { } taken ? Math.Max(0, week.Days.Length + taken - RestDays) : null;

    /// <summary>How many days beside the week are taken by a session, match, test or long journey before one is free; null where none of them is laid out.</summary>
    /// <param name="beside">The day so far from the week.</param>
    private static int? Taken(Season season, WeekLimits limits, ImmutableArray<DateOnly> matchDays, GroupId? group, Func<int, DateOnly> beside)
    {
        var days = Enumerable.Range(1, RestDays - 1).Select(beside).ToList();
        var trained = Mine(season, season.AllSessions.Where(session => !session.IsCancelled && days.Contains(session.Day)), group).Select(session => session.Day).ToHashSet();
        return trained.Count == 0 ? null : days.TakeWhile(day => trained.Contains(day) || matchDays.Contains(day) || season.TestDays.Any(test => test.Day == day)
            || TravelOf(season, limits, day) is WeekTravel.Long or WeekTravel.Arrival).Count();
    }

    /// <summary>sprint-exposure-gap: the next dose is due so many days after the last one, as far as it is known.</summary>
    private static int? SprintBy(Season season, DateOnly first, GroupId? group)
    {
        var last = Mine(season, season.AllSessions.Where(session => session is { IsOurs: true, IsCancelled: false } && session.Day < first && session.Day >= first.AddDays(-SprintDays)), group)
            .Where(session => session.Kind == SessionKind.Speed).Select(session => (DateOnly?)session.Day).Max();
        return last is { } day && day.DayNumber + SprintDays - first.DayNumber is >= 0 and < 7 and var due ? due : null;
    }

    private static int Left(Season season, DateOnly day) => season.Events.Where(item => Problem.Reads(item) && item.Days.Contains(day)).Select(item => item.Training!.Value.Value).DefaultIfEmpty(100).Min();

    /// <summary>travel-day-load and time-zone-arrival. A journey whose clocks are not known may be a long one; those of single players are not the squad's.</summary>
    private static WeekTravel TravelOf(Season season, WeekLimits limits, DateOnly day)
    {
        var legs = season.Events.Where(item => item.For is null).SelectMany(item => item.Legs ?? []).ToList();
        DateOnly Last(Leg leg) => leg.ArrivalDay ?? leg.Day;
        bool IsLong(Leg leg) => leg.Hours is not { } hours || hours > limits.TravelLong;
        bool IsFar(Leg leg) => leg.Hours > limits.TravelHaul || IsLong(leg) && Last(leg) > leg.Day || Math.Abs(leg.ZoneShift ?? 0) >= limits.Zones;
        return legs.Exists(leg => IsFar(leg) && Last(leg) == day) ? WeekTravel.Arrival
            : legs.Exists(leg => IsLong(leg) && leg.Day <= day && day <= Last(leg)) ? WeekTravel.Long
            : legs.Exists(leg => IsFar(leg) && Last(leg).AddDays(1) == day) ? WeekTravel.After
            : WeekTravel.None;
    }
}
