using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>All sessions and matches per athlete, rolling 7 days.</summary>
internal static class FullRestDayMissing
{
    public static readonly Figure WindowDays = Figure.Number("window_days", 7, FigureUnit.Days);
    public static readonly Figure MinRestDays = Figure.Number("min_rest_days", 1, FigureUnit.Days);
    public static readonly Figure TravelCountsH = Figure.Number("travel_counts_h", 4, FigureUnit.Hours);

    public static Rule Rule { get; } = new("full-rest-day-missing")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.Fifa2025, Sources.NcaaHours, Sources.Nata2019],
        Figures = [WindowDays, MinRestDays, TravelCountsH],
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var limits = Limits.Of(figures);
        return plan.Athletes.Looks(athlete => Looks(plan, new FreeDays(plan, athlete, limits.Travel), limits));
    }

    internal static Func<Session, bool> Against(Plan plan, Figures figures)
    {
        var limits = Limits.Of(figures);
        Dictionary<AthleteDays, FreeDays> known = [];
        return session => plan.Athletes.For(session).Any(athlete =>
        {
            if (!known.TryGetValue(athlete, out var free)) known.Add(athlete, free = new FreeDays(plan, athlete, limits.Travel));
            return free.IsFree(session.Day) && Enumerable.Range(0, limits.Window).Any(back => free.Count(session.Day.AddDays(back - limits.Window + 1), session.Day.AddDays(back)) <= limits.Least);
        });
    }

    /// <summary>Of the windows that end in a week the one with the fewest free days.</summary>
    private static IEnumerable<Look> Looks(Plan plan, FreeDays free, Limits limits)
    {
        foreach (var week in plan.Weeks)
        {
            var (first, last, count, beyond) = (default(DateOnly), default(DateOnly), (int?)null, 0m);
            for (var end = week.Days.First; end <= week.Days.Last; end = end.AddDays(1))
            {
                if (free.Count(end.AddDays(1 - limits.Window), end) is not { } there) continue;
                beyond += Math.Max(0, limits.Least - there);
                if (count is null || there < count) (first, last, count) = (end.AddDays(1 - limits.Window), end, there);
            }
            if (count is null)
            {
                if (week.HasOurs || week.HasPractices || week.IsTraining) yield return new TooLittle(Place.Of(week), week.HasOurs ? "missing.practices" : "missing.sessions");
                continue;
            }
            if (count >= limits.Least) yield return new Fine(Place.Of(week));
            else
            {
                yield return new Breach(Place.Of(week), "none", Severity.Warning, count.Value, limits.Least)
                {
                    Numbers = [limits.Window, first, last, count, limits.Least],
                    Figure = MinRestDays.Name,
                    Beyond = beyond,
                    IsForced = free.CountWithoutSessions(first, last) < limits.Least,
                    Remedy = free.Emptied(first, last, limits.Least),
                };
            }
        }
    }

    private readonly record struct Limits(int Window, decimal Least, decimal Travel)
    {
        public static Limits Of(Figures figures) => new(Math.Max(1, (int)figures.Number(WindowDays)), figures.Number(MinRestDays), figures.Number(TravelCountsH));
    }

    /// <summary>Days of one athlete in a row: whether each is free of sessions, matches, tests and long travel. Fewer than the window has cannot be judged.</summary>
    public static Verdict Judge(IReadOnlyList<bool> isFree, Figures figures)
    {
        var window = (int)figures.Number(WindowDays);
        if (isFree.Count < window) return Verdict.TooLittle;
        return new(Enumerable.Range(0, isFree.Count - window + 1).Any(first => isFree.Skip(first).Take(window).Count(free => free) < figures.Number(MinRestDays)) ? Severity.Warning : null);
    }
}
