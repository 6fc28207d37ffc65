using Seasonwright.Core.Rooms;

namespace Seasonwright.Solver.Tests;

/// <summary>What a careful hand does: session by session, each to the free start that costs least.</summary>
internal static class RoomGreedy
{
    public static (RoomWeek Week, int Missed, long Cost) Of(RoomWeek week)
    {
        var (so, missed, cost) = (week.With(ask => RoomModel.IsLocked(ask) ? ask.Place : null), 0, 0L);
        foreach (var (team, ask) in week.Asks.Where(one => !RoomModel.IsLocked(one.Ask)))
        {
            var free = RoomModel.Possible(week, team, ask).OrderBy(slot => RoomPrices.Of(week, team, ask, slot))
                .Where(slot => !RoomClash.Of(so.With(ask.Id, slot.PlaceIn(week))).Any(clash => clash.Sessions.Contains(ask.Id))).Take(1).ToList();
            if (free.Count == 0)
            {
                missed++;
                continue;
            }
            so = so.With(ask.Id, free[0].PlaceIn(week));
            cost += RoomPrices.Of(week, team, ask, free[0]);
        }
        return (so, missed, cost);
    }
}
