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

    private static IEnumerable<Look> Looks(Plan plan, Figures figures) =>
        from journey in plan.Events
        where journey.Legs is { Count: > 0 }
        from look in Looks(plan, journey, figures)
        select look;

    private static IEnumerable<Look> Looks(Plan plan, Event journey, Figures figures)
    {
        var stays = Stays(journey, figures);
        if (stays.Count == 0)
        {
            // A shift of nothing is known, one that nobody entered is not.
            if (journey.Legs!.Any(leg => leg.ZoneShift is null) && plan.Matches.FirstOrDefault(match => journey.Days.Contains(match.Day!.Value)) is { } unknown) yield return new TooLittle(Place.Of(plan, unknown), "missing.zones");
            yield break;
        }
        foreach (var match in plan.Matches)
        {
            // What is arrived at on the day of a match counts for it only where nothing came before, or where the clocks say so.
            var stay = stays.LastOrDefault(stay => stay.Arrival < match.Day || stay.Arrival == match.Day && (stay == stays[0] || stay.At <= match.KickOff));
            if (stay is null || match.Day > journey.Days.Last && (stay != stays[^1] || match.Day!.Value.DayNumber - stay.Arrival.DayNumber >= Need(stay.Zones, figures))) continue;
            yield return Judge(Place.Of(plan, match), match, stay.Zones, match.Day!.Value.DayNumber - stay.Arrival.DayNumber, figures);
        }
    }

    /// <summary>
    /// Where a journey brings a body's clock: after each leg that shifts it, how many zones it then is from what the body is used
    /// to. Whoever stays as long as those zones need is used to the new place, so that the way home counts.
    /// </summary>
    private static List<Stay> Stays(Event journey, Figures figures)
    {
        List<Stay> stays = [];
        var (offset, used) = (0m, 0m);
        foreach (var leg in journey.Legs!.Where(leg => leg.ZoneShift is not (null or 0)).OrderBy(leg => leg.ArrivalDay ?? leg.Day))
        {
            if (stays.Count > 0 && leg.Day.DayNumber - stays[^1].Arrival.DayNumber >= Need(offset - used, figures)) used = offset;
            offset += leg.ZoneShift!.Value;
            stays.Add(new Stay(leg.ArrivalDay ?? leg.Day, leg.Arrives, offset - used));
        }
        return stays;
    }

    private static decimal Need(decimal zones, Figures figures) => Math.Abs(zones) * figures.Number(zones > 0 ? EastDay : WestDay);

    private sealed record Stay(DateOnly Arrival, TimeOnly? At, decimal Zones);

    private static Look Judge(Place place, Match match, decimal shift, int days, Figures figures)
    {
        var zones = Math.Abs(shift);
        var need = Need(shift, figures);
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
