using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

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
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var limits = Limits.Of(figures);
        var legs = plan.Events.Where(item => item.For is null).SelectMany(item => item.Legs ?? []).ToList();
        return BeforeMatches(plan, figures)
            .Concat(legs.Count == 0 ? [] : BetterSession.Mended(plan, plan.Sessions, session => Judge(plan, session, legs, limits)))
            .Concat(legs.Where(leg => leg.Hours > limits.Long && plan.WeekOf(leg.Day) is { HasOurs: false }).Select(leg => new TooLittle(Place.Of(plan.WeekOf(leg.Day)!), "missing.sessions")));
    }

    internal static Func<Session, bool> Against(Plan plan, Figures figures)
    {
        var limits = Limits.Of(figures);
        var legs = plan.Events.Where(item => item.For is null).SelectMany(item => item.Legs ?? []).ToList();
        return session => Judge(plan, session, legs, limits) is Breach;
    }

    /// <summary>A session on the day of long travel, or soon after a long haul; null for any other.</summary>
    private static Look? Judge(Plan plan, Session session, List<Leg> legs, Limits limits)
    {
        Look? look = null;
        foreach (var leg in legs)
        {
            var last = leg.ArrivalDay ?? leg.Day;
            if (session.Day < leg.Day || session.Day > last.AddDays(limits.RestDays)) continue;
            var place = Place.Of(plan, session);
            var isThatDay = session.Day <= last;
            if (leg.Hours is not { } hours)
            {
                if (isThatDay) look ??= new TooLittle(place, "missing.clocks");
                continue;
            }
            var isTooMuch = isThatDay && hours > limits.Long && (session.Rpe.Value > limits.Rpe || session.Minutes.Value > limits.Minutes);
            var rest = (decimal)(session.Day.ToDateTime(session.Begins) - last.ToDateTime(leg.Arrives!.Value)).TotalHours;
            var isSoon = hours > limits.Haul && rest >= 0 && rest < limits.Rest && SessionUse.IsHard(session);
            if (!isTooMuch && !isSoon)
            {
                if (hours > limits.Long && isThatDay || hours > limits.Haul && rest < limits.Rest) look ??= new Fine(place);
                continue;
            }
            return isTooMuch ? session.Rpe.Value > limits.Rpe ? Told("effort", session.Rpe.Value, limits.Rpe, MaxRpe, hours) : Told("long", session.Minutes.Value, limits.Minutes, MaxMin, hours)
                : Told("after", Math.Floor(rest), limits.Rest, RestH, hours);

            Breach Told(string code, decimal value, decimal limit, Figure figure, decimal hours) => new(place, code, Severity.Caution, value, limit)
            {
                Numbers = [new NamedSession(session), value, limit, Math.Round(hours, 1)],
                Figure = figure.Name,
                Whose = plan.NamesOf(session.Groups),
            };
        }
        return look;
    }

    /// <summary>Long journeys that end shortly before a match.</summary>
    private static IEnumerable<Look> BeforeMatches(Plan plan, Figures figures)
    {
        foreach (var leg in plan.Events.SelectMany(item => item.Legs ?? ValueList<Leg>.Empty))
        {
            var day = leg.ArrivalDay ?? leg.Day;
            if (leg.Hours is not { } hours)
            {
                if (plan.Matches.FirstOrDefault(match => match.Day >= day && match.Day <= day.AddDays(1)) is { } soon) yield return new TooLittle(Place.Of(plan, soon), "missing.clocks");
                continue;
            }
            var arrival = day.ToDateTime(leg.Arrives!.Value);
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

    private readonly record struct Limits(decimal Long, decimal Haul, decimal Rpe, decimal Minutes, decimal Rest)
    {
        public int RestDays => (int)Math.Ceiling(Rest / 24);

        public static Limits Of(Figures figures) => new(figures.Number(LongH), figures.Number(HaulH), figures.Number(MaxRpe), figures.Number(MaxMin), figures.Number(RestH));
    }
}
