using System.Collections.Immutable;
using Seasonwright.Core.Rooms;

namespace Seasonwright.Solver;

/// <summary>Every condition of a room's week, once: the model keeps to this list, and why a session is not elsewhere is read from it.</summary>
internal static class RoomConditions
{
    /// <summary>Heavy work for the legs keeps so many days to a match and so many half hours to the next of its kind: the usual figures of heavy-lower-before-match and heavy-session-spacing.</summary>
    private const int HeavyBefore = 3, HeavyApart = 96;

    /// <summary>What keeps a session from a start, whatever else is in the room.</summary>
    public static ImmutableArray<(RoomCondition Condition, Func<RoomWeek, RoomTeam, RoomAsk, RoomSlot, bool> Forbids)> Places { get; } =
    [
        (new("larger"), (week, _, ask, _) => ask.Athletes > week.Room.Places),
        (new("open"), (week, _, ask, slot) => !week.Room.IsOpen(slot.DayOf(week), slot.Minute, slot.Minute + ask.Minutes.Value)),
        (new("window"), (week, _, ask, slot) => ask.Windows is { } windows && !windows.Any(window => window.Holds(slot.DayOf(week), slot.Minute, slot.Minute + ask.Minutes.Value))),
        (new("match"), (week, team, _, slot) => team.HasMatch(slot.DayOf(week))),
        (new("before", "heavy-lower-before-match"), (week, team, ask, slot) => ask.IsHeavy && Enumerable.Range(1, HeavyBefore - 1).Any(days => team.HasMatch(slot.DayOf(week).AddDays(days)))),
        (new("after", "day-after-match-hard"), (week, team, ask, slot) => ask.IsHeavy && team.HasMatch(slot.DayOf(week).AddDays(-1))),
        (new("practice"), (week, team, ask, slot) => IsBesidePractice(week, team, ask, slot, 0)),
    ];

    /// <summary>Sessions of one team of which no two begin so near each other. Whoever is too near a third one is too near all between.</summary>
    public static ImmutableArray<(RoomCondition Condition, Func<RoomAsk, bool> Of, Func<RoomSlot, RoomSlot, bool> IsTooNear)> OfTeam { get; } =
    [
        (new("once"), _ => true, (one, next) => one.Day == next.Day),
        (new("apart", "heavy-session-spacing"), ask => ask.IsHeavy, (one, next) => Math.Abs(next.Half - one.Half) < HeavyApart),
    ];

    /// <summary>What the room holds in any half hour.</summary>
    public static ImmutableArray<(RoomCondition Condition, Func<RoomAsk, int> Of, Func<Room, int> Most)> OfHalfHour { get; } =
    [
        (new("full"), ask => ask.Athletes, room => room.Places),
        (new("coaches"), _ => 1, room => room.Coaches),
    ];

    /// <summary>Everything a session is kept from a start by, whatever else is in the room.</summary>
    public static IEnumerable<RoomCondition> Against(RoomWeek week, RoomTeam team, RoomAsk ask, RoomSlot slot) =>
        Places.Where(place => place.Forbids(week, team, ask, slot)).Select(place => place.Condition);

    /// <summary>What keeps two sessions of one team apart.</summary>
    public static IEnumerable<RoomCondition> Against(RoomAsk one, RoomSlot at, RoomAsk other, RoomSlot there) =>
        OfTeam.Where(pair => one.Shares(other.Groups) && pair.Of(one) && pair.Of(other) && pair.IsTooNear(at, there)).Select(pair => pair.Condition);

    /// <summary>Whether a session runs into a practice of its team's, or leaves it less than so many minutes.</summary>
    public static bool IsBesidePractice(RoomWeek week, RoomTeam team, RoomAsk ask, RoomSlot slot, int minutes) => team.Practices?.Any(practice =>
        practice.Day == slot.DayOf(week) && ask.Shares(practice.Groups) && practice.From < slot.Minute + ask.Minutes.Value + minutes && slot.Minute < practice.To + minutes) == true;
}
