using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Trip: zones crossed, direction, arrival date; match date.</summary>
internal static class TimeZoneArrival
{
    public static readonly Figure MinZones = Figure.Number("min_zones", 3, FigureUnit.Count);
    public static readonly Figure EastDay = Figure.Number("east_day", 1, FigureUnit.Days);
    public static readonly Figure WestDay = Figure.Number("west_day", 0.5m, FigureUnit.Days);
    public static readonly Figure WarnShare = Figure.Number("warn_share", 0.5m, FigureUnit.Share);

    public static Rule Rule { get; } = new("time-zone-arrival")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Warning,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.Confirmed,
        Sources = [Sources.JanseVanRensburg2021, Sources.JanseVanRensburg2021Consensus, Sources.NationalTeamTravel],
        Figures = [MinZones, EastDay, WestDay, WarnShare],
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        foreach (var journey in plan.Events.Where(item => item.Legs is { Count: > 0 }))
        {
            var legs = journey.Legs!.OrderBy(leg => leg.Day).ToList();
            var zones = 0m;
            for (var i = 0; i < legs.Count; i++)
            {
                zones += legs[i].ZoneShift ?? 0;
                var arrival = legs[i].ArrivalDay ?? legs[i].Day;
                var until = i + 1 < legs.Count ? legs[i + 1].Day : journey.Days.Last;
                if (legs[i].ZoneShift is null or 0 || plan.Matches.FirstOrDefault(match => match.Day >= arrival && match.Day <= until) is not { } match || plan.WeekOf(match.Day!.Value) is not { } week) continue;
                yield return Judge(new Place($"match/{match.Id}", week.Number, week.Number), match, zones, match.Day.Value.DayNumber - arrival.DayNumber, figures);
            }
        }
    }

    private static Look Judge(Place place, Match match, decimal shift, int days, Figures figures)
    {
        var zones = Math.Abs(shift);
        var need = zones * figures.Number(shift > 0 ? EastDay : WestDay);
        if (zones < figures.Number(MinZones) || days >= need) return new Fine(place);
        var isLate = days < figures.Number(WarnShare) * need && match.Importance == Importance.Key;
        return new Breach(place, shift > 0 ? "east" : "west", isLate ? Severity.Warning : Severity.Caution, days, need)
        {
            Numbers = [zones, days, match.Day, need],
            Figure = (shift > 0 ? EastDay : WestDay).Name,
            IsForced = true,
        };
    }
}
