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
            if (leg is not { Departs: { } departs, Arrives: { } arrives }) continue;
            var arrival = (leg.ArrivalDay ?? leg.Day).ToDateTime(arrives);
            // What the clock moved east was not travelled.
            var hours = (decimal)(arrival - leg.Day.ToDateTime(departs)).TotalHours - (leg.ZoneShift ?? 0);
            if (hours <= figures.Number(HaulH) || plan.Matches.FirstOrDefault(match => match is { KickOff: { } kickOff } && match.Day!.Value.ToDateTime(kickOff) >= arrival) is not { } next
                || plan.WeekOf(next.Day!.Value) is not { } week) continue;
            var before = Math.Round((decimal)(next.Day.Value.ToDateTime(next.KickOff!.Value) - arrival).TotalHours, MidpointRounding.AwayFromZero);
            var place = new Place($"match/{next.Id}", week.Number, week.Number);
            yield return before >= figures.Number(BeforeMatchH)
                ? new Fine(place)
                : new Breach(place, "haul", Severity.Warning, before, figures.Number(BeforeMatchH))
                {
                    Numbers = [Math.Round(hours, 1), before, next.Day, figures.Number(BeforeMatchH)],
                    Figure = BeforeMatchH.Name,
                    IsForced = true,
                };
        }
    }
}
