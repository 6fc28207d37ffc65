using Seasonwright.Core.Rooms;

namespace Seasonwright.Web.Rooms;

/// <summary>One day of a room's week as it is drawn.</summary>
/// <param name="Blocks">Sessions in the room, by time; those at one time side by side.</param>
/// <param name="Lanes">How many stand side by side at most, at least 1.</param>
/// <param name="Use">Its half hours in which somebody is there.</param>
/// <param name="Matches">Teams with a match that day.</param>
public sealed record RoomDay(DateOnly Day, IReadOnlyList<RoomBlock> Blocks, int Lanes, IReadOnlyList<RoomUse> Use, IReadOnlyList<RoomTeam> Matches)
{
    /// <summary>The most athletes at one time.</summary>
    public int Fullest => Use.Select(half => half.Athletes).DefaultIfEmpty().Max();

    /// <summary>Half hours one after the other with as many athletes are one stretch.</summary>
    public IEnumerable<(int From, int To, int Athletes, int Sessions)> Stretches()
    {
        (int From, int To, int Athletes, int Sessions)? run = null;
        foreach (var half in Use)
        {
            if (run is var (from, to, athletes, sessions) && to == half.From && athletes == half.Athletes && sessions == half.Sessions.Count) run = (from, half.To, athletes, sessions);
            else
            {
                if (run is { } done) yield return done;
                run = (half.From, half.To, half.Athletes, half.Sessions.Count);
            }
        }
        if (run is { } last) yield return last;
    }

    /// <param name="plan">Whose sessions they are.</param>
    /// <param name="shown">The week as it stands, or as a proposal has it.</param>
    public static IReadOnlyList<RoomDay> Of(RoomPlan plan, RoomWeek shown)
    {
        var (clashes, use) = (RoomClash.Of(shown), RoomUse.Of(shown));
        return [.. shown.Span.Days().Select(day => Of(day))];

        RoomDay Of(DateOnly day)
        {
            List<int> free = [];
            List<RoomBlock> blocks = [];
            foreach (var (team, ask, at) in shown.Placed.Where(one => one.At.Day == day).OrderBy(one => one.At.Start).ThenByDescending(one => one.Ask.Minutes.Value))
            {
                var from = Clock.Minute(at.Start) / Clock.HalfHour * Clock.HalfHour;
                var lane = free.FindIndex(until => until <= from);
                if (lane < 0) (lane, free) = (free.Count, [.. free, 0]);
                free[lane] = ask.End(at.Start);
                blocks.Add(new(plan.Booking(ask.Id)!, ask, at, lane, [.. clashes.Where(clash => clash.Sessions.Contains(ask.Id)).Select(clash => clash.Sentence)], plan.Ask(ask.Id)!.Place is var stood && stood != at));
            }
            return new(day, blocks, Math.Max(1, free.Count), [.. use.Where(half => half.Day == day)], [.. shown.Teams.Where(team => team.HasMatch(day))]);
        }
    }
}
