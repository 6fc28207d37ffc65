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
    /// <summary>A journey of more hours fills its day (travel-day-load, long_h); one without clocks may.</summary>
    private const double LongJourney = 4;

    /// <summary>So many days beside the week matter for what lies in it.</summary>
    private const int Beside = 3;

    /// <summary>Reads a week. Total: whatever season and setup hold, there is a problem; one that nothing is proposed for says why.</summary>
    /// <param name="from">Earlier days are facts.</param>
    public static WeekProblem Of(Season season, Setup setup, SeasonWeek week, DateOnly from)
    {
        var (first, matchDays) = (week.Days.First, season.MatchDays);
        var problem = Problem.Of(season, setup, Wishes.Of(season));
        var planned = problem.Weeks[week.Number - 1];
        var load = WeekLoad.Of(season, setup, week);
        var days = DayLoad.Of(season, setup, week).Select((day, index) => new WeekDay(index, day.Day, MatchDay.Of(day.Day, matchDays), day.Match.Au,
            Left(season, day.Day), day.Day < from, IsTravel(season, day.Day))).ToValueList();
        var kind = season.KindOf(week.Id) ?? (planned.IsBreak ? WeekKind.Break : planned.Matches.Count switch { 0 => WeekKind.Building, 1 => WeekKind.Competition, _ => WeekKind.Congested });
        var phase = season.PhaseOf(week)?.Phase.Kind;
        var sessions = AthleteSessions.Of(season, week).Where(session => !session.IsCancelled).ToList();
        bool IsOpen(Session session) => session is { IsOurs: true, IsLocked: false, Groups: null } && session.Day >= from && session.Kind != SessionKind.Test;
        var practice = load.Practice?.Au ?? PracticeOf(season, problem, planned, kind, load);
        var slot = UsualSlot(season);
        var dated = sessions.Where(session => !session.IsOurs).Select(session => WeekSession.Of(session, setup, first)).ToList();
        var isDated = season.SessionsIn(week).Any(session => !session.IsOurs);
        if (!isDated) dated = AssumedPractices.Of(season, setup, week, days, practice, slot);
        var around = season.AllSessions.Where(session => !session.IsCancelled && session.Groups is null && (session.Day < first && session.Day >= first.AddDays(-Beside) || session.Day > week.Days.Last && session.Day <= week.Days.Last.AddDays(Beside)));
        var given = dated.Concat(sessions.Where(session => session.IsOurs && !IsOpen(session)).Concat(around).Select(session => WeekSession.Of(session, setup, first))).ToValueList();
        var time = season.Brief.Time?.FirstOrDefault(time => time.Phase == phase) ?? (phase == PhaseKind.Peak ? season.Brief.Time?.FirstOrDefault(time => time.Phase == PhaseKind.Competition) : null);
        return new WeekProblem(
            days,
            given,
            TestsOf(season, week, sessions, first, from, slot).ToValueList(),
            sessions.Where(IsOpen).Select(session => WeekSession.Of(session, setup, first)).ToValueList(),
            matchDays.Select(day => day.DayNumber - first.DayNumber).Where(day => day is >= -Beside and < 0 || day >= days.Count && day < days.Count + Beside).ToValueList(),
            load.Target is { } target ? Math.Max(0, target.Au - load.Match.Au - practice) : null,
            Asked(season, setup, week, kind, phase, planned),
            SessionRange.Kinds.ToValueList(),
            kind,
            phase,
            setup.ReferenceWeek.Au,
            time?.Hours * 60,
            time?.Days,
            RestBy(season, week),
            WeekLimits.Of(setup),
            StopOf(season, week, days, kind))
        { PracticeSlot = slot };
    }

    private static string? StopOf(Season season, SeasonWeek week, ValueList<WeekDay> days, WeekKind kind) =>
        season.IsLocked(week.Id) ? "stop.locked"
        : days.All(day => day.IsPast) ? "stop.past"
        : kind == WeekKind.Break ? "stop.off"
        : days.Where(day => !day.IsPast).All(day => day.IsClosed || day.IsMatch) ? "stop.closed"
        : null;

    /// <summary>Suggested practice where none is entered: the kind's share of the usual week, at most 72 % of the training.</summary>
    private static int PracticeOf(Season season, Problem problem, PlannedWeek week, WeekKind kind, WeekLoad load)
    {
        var before = week.Index > 0 ? season.KindOf(season.Weeks[week.Index - 1].Id) : null;
        var variant = kind is WeekKind.Introductory or WeekKind.ReEntry ? before == kind ? Variant.Second : Variant.First : Variant.None;
        var training = load.Target is { } target ? Math.Max(0, problem.Points.Of(target) - week.MatchPoints) : 1000;
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

    /// <summary>full-rest-day-missing, over the week's edge: where the days before are laid out, the next free day is due seven days after the last.</summary>
    private static int? RestBy(Season season, SeasonWeek week)
    {
        var before = Enumerable.Range(1, 6).Select(back => week.Days.First.AddDays(-back)).ToList();
        if (!season.AllSessions.Any(session => !session.IsCancelled && before.Contains(session.Day))) return null;
        var free = before.FindIndex(day => !season.AllSessions.Any(session => session.Day == day && !session.IsCancelled) && !season.MatchDays.Contains(day));
        return free < 0 ? 0 : 6 - free;
    }

    private static int Left(Season season, DateOnly day) => season.Events.Where(item => Problem.Reads(item) && item.Days.Contains(day)).Select(item => item.Training!.Value.Value).DefaultIfEmpty(100).Min();

    private static bool IsTravel(Season season, DateOnly day) => season.Events.SelectMany(item => item.Legs ?? []).Any(leg => (leg.Day == day || leg.ArrivalDay == day)
        && (leg is not { Departs: { } departs, Arrives: { } arrives } || ((leg.ArrivalDay ?? leg.Day).ToDateTime(arrives) - leg.Day.ToDateTime(departs)).TotalHours - (double)(leg.ZoneShift ?? 0) > LongJourney));
}
