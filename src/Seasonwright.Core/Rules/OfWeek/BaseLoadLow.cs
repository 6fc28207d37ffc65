using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Mean of the 4 weeks of training before; planned in-season typical week; next match or high-load week date.</summary>
internal static class BaseLoadLow
{
    public static readonly Figure MinShare = Figure.Number("min_share", 0.7m, FigureUnit.Share);
    public static readonly Figure LookAheadDays = Figure.Number("look_ahead_days", 14, FigureUnit.Days);
    public static readonly Figure TypicalPoints = Figure.Number("typical_points", 72, FigureUnit.Points, least: 1);

    public static Rule Rule { get; } = new("base-load-low")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Caution,
        Evidence = Evidence.Contested,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.Malone2017, Sources.Gabbett2016],
        Figures = [MinShare, LookAheadDays, TypicalPoints],
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        const int weeks = 4;
        foreach (var week in plan.Weeks.Where(week => week.IsTraining && week.Number > weeks))
        {
            var ahead = plan.Official.FirstOrDefault(match => match.Day >= week.Days.First && match.Day.Value.DayNumber - week.Days.First.DayNumber < figures.Number(LookAheadDays));
            if (ahead is null) continue;
            var place = Place.Of(week);
            if (plan.SinceAbsence(week) < weeks)
            {
                yield return new TooLittle(place, "missing.absence");
                continue;
            }
            var before = plan.TrainedBefore(week, weeks).Select(other => other.Total).ToList();
            if (before.Count < weeks || before.Exists(load => load is null))
            {
                yield return new TooLittle(place, "missing.weeks");
                continue;
            }
            var mean = before.Average()!.Value;
            var share = (mean / (figures.Number(TypicalPoints) * plan.Point)).AsShown();
            if (share >= figures.Number(MinShare)) yield return new Fine(place);
            else
            {
                yield return new Breach(place, "low", Severity.Caution, share, figures.Number(MinShare))
                {
                    Numbers = [plan.Points(mean), share.AsPercent(), figures.Number(TypicalPoints), figures.Number(MinShare).AsPercent(), ahead.Day],
                    Figure = MinShare.Name,
                };
            }
        }
    }
}
