using Google.OrTools.Sat;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>A room's week as an integer programme: each session begins at one half hour, or has no place. Locked ones are facts.</summary>
internal sealed class RoomModel
{
    private sealed record Start(RoomTeam Team, RoomAsk Ask, RoomSlot Slot, BoolVar Is);

    private readonly RoomWeek week;
    private readonly List<Start> starts = [];
    private readonly List<(LinearExpr Missing, int Price)> missing = [];

    /// <summary>More than everything by which teams can be treated unlike: one session more or less decides first.</summary>
    private readonly int aSession;

    public RoomModel(RoomWeek week)
    {
        this.week = week;
        aSession = 1 + week.Teams.Count * RoomPrices.Missing(1, 1);
        foreach (var (team, ask) in week.Asks.Where(one => !IsLocked(one.Ask)))
            foreach (var slot in Possible(week, team, ask)) starts.Add(new(team, ask, slot, Model.NewBoolVar("")));
        foreach (var here in starts.GroupBy(start => start.Ask.Id)) Model.AddAtMostOne(here.Select(start => start.Is));
        foreach (var team in week.Teams)
        {
            Apart(team);
            Miss(team);
        }
        foreach (var (_, of, most) in RoomConditions.OfHalfHour) Within(of, most(week.Room));
    }

    public CpModel Model { get; } = new();

    public static bool IsLocked(RoomAsk ask) => ask.Place?.IsLocked == true;

    /// <summary>Where a session can begin as far as the room, its team's days and what is locked go.</summary>
    public static IEnumerable<RoomSlot> Possible(RoomWeek week, RoomTeam team, RoomAsk ask) =>
        Enumerable.Range(0, RoomWeek.Length * RoomSlot.ADay).Select(half => new RoomSlot(half)).Where(slot => !Against(week, team, ask, slot).Any());

    /// <summary>What keeps a session from a start whatever becomes of the others that are not locked.</summary>
    public static IEnumerable<RoomCondition> Against(RoomWeek week, RoomTeam team, RoomAsk ask, RoomSlot slot) => RoomConditions.Against(week, team, ask, slot)
        .Concat(team.Sessions.Where(other => other.Id != ask.Id && IsLocked(other)).SelectMany(other => RoomConditions.Against(ask, slot, other, RoomSlot.Of(week, other.Place!.Day, other.Place.Start))));

    /// <summary>First the fewest sessions without a place; among those, teams as alike as can be in the share that they miss.</summary>
    public void AimAtFewest() => Model.Minimize(Missed());

    /// <summary>Then what comes nearest to the wishes, with no more missed than is known to do.</summary>
    public void AimAtWishes(long missed)
    {
        Model.Add(Missed() <= missed);
        // One that stands pays for being moved until it has a place, whose price holds that again unless it is the same.
        var standing = week.Placed.Count(one => !one.At.IsLocked);
        Model.Minimize(LinearExpr.WeightedSum(starts.Select(start => start.Is), starts.Select(start => RoomPrices.Of(week, start.Team, start.Ask, start.Slot) - (start.Ask.Place is null ? 0 : RoomPrices.Moved))) + RoomPrices.Moved * standing);
    }

    /// <summary>No layout with this bound leaves fewer sessions without a place.</summary>
    public int SessionsIn(double bound) => (int)Math.Floor((bound + 0.001) / aSession);

    public Dictionary<SessionId, RoomSlot> Slots(CpSolver solver) => starts.Where(start => solver.BooleanValue(start.Is)).ToDictionary(start => start.Ask.Id, start => start.Slot);

    public void Begin(Dictionary<SessionId, RoomSlot> slots)
    {
        Model.Model.SolutionHint = null;
        foreach (var start in starts) Model.AddHint(start.Is, slots.TryGetValue(start.Ask.Id, out var slot) && slot == start.Slot);
    }

    private LinearExpr Missed() => LinearExpr.Sum(missing.Select(one => one.Missing * one.Price));

    /// <summary>From each start on, those too near it: of them one at most, for each group, whose sessions are those of its own and of everyone. A set that lies within the one before says nothing new.</summary>
    private void Apart(RoomTeam team)
    {
        foreach (var group in team.Sessions.SelectMany(ask => ask.Groups ?? []).Distinct().Select(group => (GroupId?)group).DefaultIfEmpty())
        {
            var theirs = starts.Where(start => start.Team == team && (group is not { } whose || start.Ask.Shares([whose]))).OrderBy(start => start.Slot).ToList();
            foreach (var (_, of, isTooNear) in RoomConditions.OfTeam)
            {
                var mine = theirs.FindAll(start => of(start.Ask));
                var last = -1;
                foreach (var slot in mine.Select(start => start.Slot).Distinct())
                {
                    var near = mine.FindAll(start => start.Slot.Half >= slot.Half && isTooNear(slot, start.Slot));
                    if (near[^1].Slot.Half == last) continue;
                    last = near[^1].Slot.Half;
                    Model.AddAtMostOne(near.Select(start => start.Is));
                }
            }
        }
    }

    /// <summary>Each further session that a team misses weighs more than the one before.</summary>
    private void Miss(RoomTeam team)
    {
        var open = team.Sessions.Where(ask => !IsLocked(ask)).ToList();
        if (open.Count == 0) return;
        var misses = open.Select(_ => Model.NewBoolVar("")).ToList();
        Model.Add(LinearExpr.Sum(starts.Where(start => start.Team == team).Select(start => start.Is)) + LinearExpr.Sum(misses) == open.Count);
        for (var at = 0; at < misses.Count; at++)
        {
            if (at > 0) Model.AddImplication(misses[at], misses[at - 1]);
            missing.Add((misses[at], aSession + RoomPrices.Missing(at + 1, team.Sessions.Count) - RoomPrices.Missing(at, team.Sessions.Count)));
        }
    }

    /// <summary>What is locked takes its part first; where that is too much already nothing more comes on top.</summary>
    private void Within(Func<RoomAsk, int> of, int most)
    {
        var taken = week.Placed.Where(one => one.At.IsLocked)
            .SelectMany(one => RoomSlot.Of(week, one.At.Day, one.At.Start).Touched(one.Ask), (one, half) => (half, of: of(one.Ask)))
            .GroupBy(one => one.half).ToDictionary(here => here.Key, here => here.Sum(one => one.of));
        foreach (var here in starts.SelectMany(start => start.Slot.Touched(start.Ask), (start, half) => (start, half)).GroupBy(one => one.half))
        {
            List<Start> some = [.. here.Select(one => one.start)];
            Model.Add(LinearExpr.WeightedSum(some.Select(start => start.Is), some.Select(start => of(start.Ask))) <= Math.Max(0, most - taken.GetValueOrDefault(here.Key)));
        }
    }
}
