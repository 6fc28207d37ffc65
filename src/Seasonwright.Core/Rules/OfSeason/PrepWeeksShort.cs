using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfSeason;

/// <summary>First training day of preparation; first official match; absence length before it.</summary>
internal static class PrepWeeksShort
{
    public static readonly Figure MinWeeks = Figure.Number("min_weeks", 4, FigureUnit.Weeks);
    public static readonly Figure UsualWeeks = Figure.Number("usual_weeks", 6, FigureUnit.Weeks);

    public static Rule Rule { get; } = new("prep-weeks-short")
    {
        Scope = RuleScope.Season,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Fifpro2025, Sources.Ekstrand2020, Sources.Windt2017],
        Figures = [MinWeeks, UsualWeeks],
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        if (plan.Official.FirstOrDefault() is not { } match || plan.WeekOf(match.Day!.Value) is not { } matchWeek) yield break;
        var first = plan.Weeks.FirstOrDefault(week => week.IsPreparation && week.Number <= matchWeek.Number) ?? plan.Weeks[0];
        var place = Place.Of(first, matchWeek);
        var weeks = WholeWeeks(first.Days.First, match.Day.Value);
        if (SeverityOf(weeks, figures) is not { } severity) yield return new Fine(place);
        else
        {
            var limit = severity == Severity.Warning ? MinWeeks : UsualWeeks;
            yield return new Breach(place, "short", severity, weeks, figures.Number(limit))
            {
                Numbers = [weeks, figures.Number(UsualWeeks)],
                Figure = limit.Name,
                Beyond = figures.Number(UsualWeeks) - weeks,
                // Starting with the season's first day would help no more.
                IsForced = SeverityOf(WholeWeeks(plan.Weeks[0].Days.First, match.Day.Value), figures) >= severity,
            };
        }
    }

    private static Severity? SeverityOf(int weeks, Figures figures) =>
        weeks < figures.Number(MinWeeks) ? Severity.Warning : weeks < figures.Number(UsualWeeks) ? Severity.Caution : null;

    private static int WholeWeeks(DateOnly from, DateOnly match) => (match.DayNumber - from.DayNumber) / 7;
}
