using System.Globalization;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rooms;

/// <summary>
/// Something that is wrong where sessions stand in a room. Any placement can be judged, whoever made it: while a session is
/// dragged, and what the engine proposes. The engine does not see this file.
/// </summary>
/// <param name="Sessions">Those it is about.</param>
/// <param name="From">Minute of the day.</param>
/// <param name="To">Minute of the day.</param>
/// <param name="Sentence">The clash in words.</param>
public sealed record RoomClash(RoomClashKind Kind, ValueList<SessionId> Sessions, DateOnly Day, int From, int To, string Sentence)
{
    /// <summary>Days that heavy work for the legs keeps to the next match, as in the week stage, and hours that it keeps to the next of its kind: heavy-lower-before-match, heavy-session-spacing.</summary>
    private const int DaysBefore = 3, HoursApart = 48;

    /// <summary>Everything that is wrong in a week: the room's own clashes first, then those of its teams in order.</summary>
    public static ValueList<RoomClash> Of(RoomWeek week)
    {
        var use = RoomUse.Of(week);
        return
        [
            .. Stretches(RoomClashKind.Places, use.Where(half => half.Athletes > week.Room.Places), half => half.Athletes, "room.places", week.Room.Places),
            // Two sessions of one team at one time need two coaches as well.
            .. Stretches(RoomClashKind.Coaches, use.Where(half => half.Sessions.Count > week.Room.Coaches), half => half.Sessions.Count, "room.coaches", week.Room.Coaches),
            .. week.Placed.SelectMany(one => Alone(week, one.Team, one.Ask, one.At)),
            .. week.Teams.SelectMany(Together),
        ];
    }

    /// <summary>Half hours one after the other that pass a limit by the same amount are one clash.</summary>
    private static IEnumerable<RoomClash> Stretches(RoomClashKind kind, IEnumerable<RoomUse> over, Func<RoomUse, int> of, string id, int limit)
    {
        List<RoomUse> run = [];
        foreach (var half in over.Append(null))
        {
            if (run.Count > 0 && (half is null || half.Day != run[^1].Day || half.From != run[^1].To || of(half) != of(run[^1])))
            {
                yield return new(kind, run.SelectMany(one => one.Sessions).Distinct().ToValueList(), run[0].Day, run[0].From, run[^1].To,
                    Sentences.Say(id, Clock.Words(run[0].Day, run[0].From, run[^1].To), of(run[0]), limit));
                run = [];
            }
            if (half is not null) run.Add(half);
        }
    }

    /// <summary>What is wrong with a place whatever else is in the room.</summary>
    private static IEnumerable<RoomClash> Alone(RoomWeek week, RoomTeam team, RoomAsk ask, RoomPlace at)
    {
        var (from, to) = (Clock.Minute(at.Start), ask.End(at.Start));
        if (!week.Span.Contains(at.Day)) yield return Say(RoomClashKind.OtherWeek, "room.other-week");
        if (!week.Room.IsOpen(at.Day, from, to)) yield return Say(RoomClashKind.NotOpen, "room.not-open");
        if (ask.Windows?.Any(window => window.Holds(at.Day, from, to)) == false) yield return Say(RoomClashKind.Window, "room.window");
        if (team.Practices?.Any(practice => practice.Day == at.Day && ask.Shares(practice.Groups) && practice.From < to && from < practice.To) == true) yield return Say(RoomClashKind.Practice, "room.practice");
        if (team.HasMatch(at.Day)) yield return Say(RoomClashKind.MatchDay, "room.match-day");
        if (!ask.IsHeavy) yield break;
        if (Enumerable.Range(1, DaysBefore - 1).Any(days => team.HasMatch(at.Day.AddDays(days)))) yield return Say(RoomClashKind.HeavyBefore, "room.heavy-before");
        if (team.HasMatch(at.Day.AddDays(-1))) yield return Say(RoomClashKind.HeavyAfter, "room.heavy-after");

        RoomClash Say(RoomClashKind kind, string id) => new(kind, [ask.Id], at.Day, from, to, Sentences.Say(id, team.Name, ask.Name, Clock.Words(at.Day, from, to)));
    }

    /// <summary>What is wrong between sessions of one team.</summary>
    private static IEnumerable<RoomClash> Together(RoomTeam team)
    {
        var placed = team.Sessions.Where(ask => ask.Place is not null).Select(ask => (Ask: ask, At: ask.Place!)).OrderBy(one => (one.At.Day, one.At.Start)).ToList();
        for (var i = 0; i < placed.Count; i++)
            for (var j = i + 1; j < placed.Count; j++)
            {
                var (one, next) = (placed[i], placed[j]);
                if (!one.Ask.Shares(next.Ask.Groups)) continue;
                if (one.At.Day == next.At.Day) yield return Say(RoomClashKind.TwiceADay, "room.twice");
                if (one.Ask.IsHeavy && next.Ask.IsHeavy && next.At.Day.ToDateTime(next.At.Start) - one.At.Day.ToDateTime(one.At.Start) < TimeSpan.FromHours(HoursApart)) yield return Say(RoomClashKind.HeavyApart, "room.heavy-apart");

                RoomClash Say(RoomClashKind kind, string id) => new(kind, [one.Ask.Id, next.Ask.Id], next.At.Day, Clock.Minute(next.At.Start), next.Ask.End(next.At.Start),
                    Sentences.Say(id, team.Name, Told(one.Ask, one.At), Told(next.Ask, next.At)));
            }
    }

    private static string Told(RoomAsk ask, RoomPlace at) => string.Create(CultureInfo.InvariantCulture, $"{ask.Name} ({at.Day:ddd} {at.Start:HH:mm})");
}
