using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Travel legs with door-to-door hours; sessions the same day and within 24 h of arrival.</summary>
internal static class TravelDayLoad
{
    public static readonly Figure LongH = Figure.Number("long_h", 4, FigureUnit.Hours);
    public static readonly Figure HaulH = Figure.Number("haul_h", 8, FigureUnit.Hours);
    public static readonly Figure MaxRpe = Figure.Number("max_rpe", 4, FigureUnit.Rpe);
    public static readonly Figure MaxMin = Figure.Number("max_min", 45, FigureUnit.Minutes);
    public static readonly Figure RestH = Figure.Number("rest_h", 24, FigureUnit.Hours);
    public static readonly Figure BeforeMatchH = Figure.Number("before_match_h", 24, FigureUnit.Hours);

    public static Rule Rule { get; } = new("travel-day-load")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Warning,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.JanseVanRensburg2021, Sources.JanseVanRensburg2021Consensus, Sources.Soligard2016],
        Figures = [LongH, HaulH, MaxRpe, MaxMin, RestH, BeforeMatchH],
        Needs = Needs.Sessions,
        Looks = Looks,
    };

    /// <summary>Long journeys that end shortly before a match. Sessions on travel days wait for sessions.</summary>
    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        foreach (var leg in plan.Events.SelectMany(item => item.Legs ?? ValueList<Leg>.Empty))
        {
            var day = leg.ArrivalDay ?? leg.Day;
            if (leg is not { Departs: { } departs, Arrives: { } arrives })
            {
                if (plan.Matches.FirstOrDefault(match => match.Day >= day && match.Day <= day.AddDays(1)) is { } soon) yield return new TooLittle(Place.Of(plan, soon), "missing.clocks");
                continue;
            }
            var arrival = day.ToDateTime(arrives);
            // What the clock moved east was not travelled.
            var hours = (decimal)(arrival - leg.Day.ToDateTime(departs)).TotalHours - (leg.ZoneShift ?? 0);
            if (hours <= figures.Number(HaulH) || plan.Matches.FirstOrDefault(match => match.KickOff is { } kickOff ? match.Day!.Value.ToDateTime(kickOff) >= arrival : match.Day >= day) is not { } next) continue;
            yield return Judge(plan, next, arrival, hours, figures);
        }
    }

    private static Look Judge(Plan plan, Match next, DateTime arrival, decimal hours, Figures figures)
    {
        var place = Place.Of(plan, next);
        var limit = figures.Number(BeforeMatchH);
        decimal Before(TimeOnly kickOff) => Math.Round((decimal)(next.Day!.Value.ToDateTime(kickOff) - arrival).TotalHours, MidpointRounding.AwayFromZero);
        // Without its kick-off a match may begin at any hour of its day.
        if (next.KickOff is not { } at) return Before(TimeOnly.MinValue) >= limit ? new Fine(place) : new TooLittle(place, "missing.kick-off");
        return Before(at) is var before && before >= limit
            ? new Fine(place)
            : new Breach(place, "haul", Severity.Warning, before, limit)
            {
                Numbers = [Math.Round(hours, 1), before, next.Day, limit],
                Figure = BeforeMatchH.Name,
                IsForced = true,
            };
    }
}
