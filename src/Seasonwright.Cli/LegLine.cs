using Seasonwright.Core.Seasons;
using static Seasonwright.Cli.CellText;

namespace Seasonwright.Cli;

/// <summary>A leg of a journey as <c>events</c> gives it; times are local to their place.</summary>
/// <param name="ArrivalDay">When it differs from the day.</param>
/// <param name="ZoneShift">Hours the clock moves, + eastwards.</param>
internal sealed record LegLine(DateOnly Day, string? From, string? To, string? Departs, string? Arrives, DateOnly? ArrivalDay, decimal? ZoneShift)
{
    public static LegLine Of(Leg leg) => new(leg.Day, leg.From, leg.To, Time(leg.Departs), Time(leg.Arrives), leg.ArrivalDay, leg.ZoneShift);
}
