using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>Why a session of a room's week is not where it was wished, and why it has no place at all.</summary>
internal sealed class RoomTold
{
    private readonly RoomWeek week;
    private readonly Dictionary<int, RoomUse> use;

    public RoomTold(RoomWeek week)
    {
        this.week = week;
        use = RoomUse.Of(week).ToDictionary(half => RoomSlot.Of(week, half.Day, Clock.Time(half.From)).Half);
    }

    /// <summary>What is against a start, with the half hours in which the room cannot hold the session; its own place is not counted.</summary>
    public IEnumerable<(RoomCondition Condition, ValueList<int> Halves)> Against(RoomTeam team, RoomAsk ask, RoomSlot slot)
    {
        foreach (var condition in RoomConditions.Against(week, team, ask, slot)) yield return (condition, []);
        foreach (var other in team.Sessions.Where(other => other.Id != ask.Id && other.Place is not null))
            foreach (var condition in RoomConditions.Against(ask, slot, other, RoomSlot.Of(week, other.Place!.Day, other.Place.Start))) yield return (condition, []);
        foreach (var (condition, of, most) in RoomConditions.OfHalfHour)
        {
            var halves = slot.Touched(ask).Where(half => use.TryGetValue(half, out var there) && there.Sessions.Where(id => id != ask.Id).Sum(id => of(Asked(id))) + of(ask) > most(week.Room)).ToValueList();
            if (halves.Count > 0) yield return (condition, halves);
        }
    }

    public ValueList<WeekReason> WhyNot(RoomTeam team, RoomAsk ask, RoomSlot slot) =>
        Against(team, ask, slot).DistinctBy(one => one.Condition).Select(one => new WeekReason(one.Halves.Count == 0 ? one.Condition.Words : $"{one.Condition.Words} ({Stretches(one.Halves)})", one.Condition.Rule)).ToValueList();

    /// <summary>Null where the session is as it was wished, or nobody said how.</summary>
    public RoomReasons? Moved(RoomTeam team, RoomAsk ask)
    {
        if (ask.Place is not { IsLocked: false } place || (ask.Day ?? place.Day) == place.Day && (ask.Start ?? place.Start) == place.Start) return null;
        var (day, start) = (ask.Day ?? place.Day, ask.Start ?? place.Start);
        var reasons = WhyNot(team, ask, RoomSlot.Of(week, day, start));
        var wished = string.Create(CultureInfo.InvariantCulture, $"{day:ddd} {start:HH:mm}");
        return new(ask.Id, reasons.Count == 0 ? PlanWords.Say("room-moved-open", team.Name, ask.Name, wished)
            : PlanWords.Say("room-moved", team.Name, ask.Name, wished, string.Join("; ", reasons.Select(reason => reason.Sentence))), reasons);
    }

    /// <summary>Why a session has no place: what forbids every start, or what is in the way at each start that would be allowed.</summary>
    public RoomReasons Unplaced(RoomTeam team, RoomAsk ask)
    {
        var possible = RoomModel.Possible(week, team, ask).ToList();
        if (possible.Count == 0)
        {
            var never = Open().SelectMany(slot => RoomModel.Against(week, team, ask, slot).Take(1)).GroupBy(condition => condition).OrderByDescending(group => group.Count())
                .Select(group => new WeekReason(group.Key.Words, group.Key.Rule)).DefaultIfEmpty(new WeekReason(PlanWords.Say("room-too-long"), "")).ToValueList();
            return new(ask.Id, PlanWords.Say("room-never", team.Name, ask.Name, Joined(never)), never);
        }
        var against = possible.Select(slot => (Slot: slot, Found: Against(team, ask, slot).ToList())).ToList();
        if (against.Find(one => one.Found.Count == 0) is { Found: not null } free)
            return new(ask.Id, PlanWords.Say("room-not-found", team.Name, ask.Name, Clock.Words(free.Slot.DayOf(week), free.Slot.Minute, free.Slot.Minute + ask.Minutes.Value)), []);
        var reasons = against.Select(one => (one.Slot, one.Found[0].Condition)).GroupBy(one => one.Condition).OrderByDescending(group => group.Count()).Select(group =>
        {
            var halves = against.SelectMany(one => one.Found.Where(found => found.Condition == group.Key).SelectMany(found => found.Halves)).Distinct().Order().ToValueList();
            return new WeekReason($"{group.Key.Words} ({(halves.Count > 0 ? Stretches(halves) : Days(group.Select(one => one.Slot)))})", group.Key.Rule);
        }).ToValueList();
        return new(ask.Id, PlanWords.Say("room-no-half-hour", team.Name, ask.Name, Joined(reasons)), reasons);

        IEnumerable<RoomSlot> Open() => Enumerable.Range(0, RoomWeek.Length * RoomSlot.ADay).Select(half => new RoomSlot(half)).Where(slot => week.Room.IsOpen(slot.DayOf(week), slot.Minute, slot.Minute + ask.Minutes.Value));
    }

    /// <summary>The half hours that would have to hold more: where nothing but the room keeps a session out.</summary>
    public IEnumerable<string> Binding() =>
        week.Asks.Where(one => one.Ask.Place is null)
            .SelectMany(one => RoomModel.Possible(week, one.Team, one.Ask).Select(slot => Against(one.Team, one.Ask, slot).ToList()))
            .Where(found => found.TrueForAll(one => one.Halves.Count > 0)).SelectMany(found => found)
            .GroupBy(one => one.Condition).OrderBy(group => group.Key.Name, StringComparer.Ordinal)
            .Select(group => PlanWords.Say("room-binding", group.Key.Words, Stretches(group.SelectMany(one => one.Halves).Distinct().Order().ToValueList())));

    private RoomAsk Asked(SessionId id) => week.Asks.First(one => one.Ask.Id == id).Ask;

    private static string Joined(IEnumerable<WeekReason> reasons) => string.Join("; ", reasons.Select(reason => reason.Sentence));

    private string Days(IEnumerable<RoomSlot> slots) => string.Join(", ", slots.Select(slot => slot.Day).Distinct().Order().Select(day => week.First.AddDays(day).ToString("ddd", CultureInfo.InvariantCulture)));

    /// <summary>"Tue 18:00-19:30, Thu 17:00-18:00".</summary>
    private string Stretches(ValueList<int> halves)
    {
        List<(int First, int Last)> runs = [];
        foreach (var half in halves)
        {
            if (runs.Count > 0 && runs[^1].Last == half - 1 && half % RoomSlot.ADay != 0) runs[^1] = (runs[^1].First, half);
            else runs.Add((half, half));
        }
        return string.Join(", ", runs.Select(run => Clock.Words(new RoomSlot(run.First).DayOf(week), new RoomSlot(run.First).Minute, new RoomSlot(run.Last).Minute + Clock.HalfHour)));
    }
}
