using System.Globalization;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rooms;

/// <summary>Whether a room's week is one that can be planned: every figure within its bounds, every id once, every time the right way round.</summary>
public static class RoomSound
{
    public const int LongestName = 80;

    private const int DaysAround = 7;

    /// <summary>What is wrong: the field's path, and the sentence. Empty when nothing is.</summary>
    public static IEnumerable<(string Field, string Sentence)> Of(RoomWeek week)
    {
        if (!Frame.PossibleDays.Contains(week.First))
        {
            // The days around it may not be in the calendar.
            yield return ("first", Sentences.Say("room.sound-day", Frame.PossibleDays.First, Frame.PossibleDays.Last));
            yield break;
        }
        foreach (var wrong in OfRoom(week.Room)) yield return ($"room.{wrong.Field}", wrong.Sentence);
        if (week.Teams.Count is < 1 or > RoomWeek.MostTeams) yield return ("teams", Sentences.Say("room.sound-count", 1, RoomWeek.MostTeams));
        for (var at = 0; at < week.Teams.Count; at++)
        {
            var team = week.Teams[at];
            var path = string.Create(CultureInfo.InvariantCulture, $"teams[{at}]");
            if (week.Teams.Take(at).Any(other => other.Id == team.Id)) yield return ($"{path}.id", Sentences.Say("room.sound-twice", team.Id));
            foreach (var wrong in OfTeam(week, team)) yield return ($"{path}.{wrong.Field}", wrong.Sentence);
        }
        var seen = new HashSet<SessionId>();
        for (var at = 0; at < week.Teams.Count; at++)
            for (var session = 0; session < week.Teams[at].Sessions.Count; session++)
                if (!seen.Add(week.Teams[at].Sessions[session].Id))
                    yield return (string.Create(CultureInfo.InvariantCulture, $"teams[{at}].sessions[{session}].id"), Sentences.Say("room.sound-twice", week.Teams[at].Sessions[session].Id));
    }

    private static IEnumerable<(string Field, string Sentence)> OfRoom(Room room)
    {
        if (IsNoName(room.Name)) yield return ("name", Sentences.Say("room.sound-name", LongestName));
        if (room.Places is < 1 or > Room.MostPlaces) yield return ("places", Sentences.Say("room.sound-count", 1, Room.MostPlaces));
        if (room.Coaches is < 1 or > Room.MostCoaches) yield return ("coaches", Sentences.Say("room.sound-count", 1, Room.MostCoaches));
        for (var at = 0; at < room.Open.Count; at++)
        {
            var hours = room.Open[at];
            var path = string.Create(CultureInfo.InvariantCulture, $"open[{at}]");
            if (!Clock.IsOnGrid(hours.From)) yield return ($"{path}.from", Sentences.Say("room.sound-grid"));
            if (!Clock.IsOnGrid(hours.To)) yield return ($"{path}.to", Sentences.Say("room.sound-grid"));
            if (hours.To <= hours.From) yield return ($"{path}.to", Sentences.Say("room.sound-backward"));
        }
    }

    private static IEnumerable<(string Field, string Sentence)> OfTeam(RoomWeek week, RoomTeam team)
    {
        if (IsNoName(team.Name)) yield return ("name", Sentences.Say("room.sound-name", LongestName));
        if (team.Sessions.Count is < 1 or > RoomWeek.MostSessions) yield return ("sessions", Sentences.Say("room.sound-count", 1, RoomWeek.MostSessions));
        for (var at = 0; at < (team.Practices?.Count ?? 0); at++)
        {
            var practice = team.Practices![at];
            var path = string.Create(CultureInfo.InvariantCulture, $"practices[{at}]");
            if (!week.Span.Contains(practice.Day)) yield return ($"{path}.day", Sentences.Say("room.sound-week", week.Span.First, week.Span.Last));
            if (practice.Minutes.Value is < Session.LeastMinutes or > Session.MostMinutes) yield return ($"{path}.minutes", Sentences.Say("room.sound-count", Session.LeastMinutes, Session.MostMinutes));
            if (practice.To > Clock.Day) yield return ($"{path}.minutes", Sentences.Say("room.sound-midnight"));
        }
        for (var at = 0; at < (team.Matches?.Count ?? 0); at++)
            if (!week.First.IsNear(team.Matches![at])) yield return (string.Create(CultureInfo.InvariantCulture, $"matches[{at}]"), Sentences.Say("room.sound-week", week.First.AddDays(-DaysAround), week.Span.Last.AddDays(DaysAround)));
        for (var at = 0; at < team.Sessions.Count; at++)
            foreach (var (field, sentence) in OfAsk(week, team.Sessions[at])) yield return (string.Create(CultureInfo.InvariantCulture, $"sessions[{at}].{field}"), sentence);
    }

    private static bool IsNear(this DateOnly first, DateOnly match) => match.DayNumber - first.DayNumber is >= -DaysAround and < RoomWeek.Length + DaysAround;

    private static IEnumerable<(string Field, string Sentence)> OfAsk(RoomWeek week, RoomAsk ask)
    {
        var inWeek = Sentences.Say("room.sound-week", week.Span.First, week.Span.Last);
        if (IsNoName(ask.Name)) yield return ("name", Sentences.Say("room.sound-name", LongestName));
        if (ask.Athletes is < 1 or > Room.MostPlaces) yield return ("athletes", Sentences.Say("room.sound-count", 1, Room.MostPlaces));
        if (ask.Minutes.Value is < RoomAsk.LeastMinutes or > RoomAsk.MostMinutes) yield return ("minutes", Sentences.Say("room.sound-count", RoomAsk.LeastMinutes, RoomAsk.MostMinutes));
        if (ask.Day is { } day && !week.Span.Contains(day)) yield return ("day", inWeek);
        if (ask.Start is { } start && !Clock.IsOnGrid(start)) yield return ("start", Sentences.Say("room.sound-grid"));
        for (var at = 0; at < (ask.Windows?.Count ?? 0); at++)
        {
            var window = ask.Windows![at];
            var path = string.Create(CultureInfo.InvariantCulture, $"windows[{at}]");
            if (!week.Span.Contains(window.Day)) yield return ($"{path}.day", inWeek);
            if (window.From is { } from && window.To is { } to && to <= from) yield return ($"{path}.to", Sentences.Say("room.sound-backward"));
        }
        if (ask.Place is not { } place) yield break;
        if (!week.Span.Contains(place.Day)) yield return ("place.day", inWeek);
        if (!Clock.IsOnGrid(place.Start)) yield return ("place.start", Sentences.Say("room.sound-grid"));
        if (ask.End(place.Start) > Clock.Day) yield return ("place.start", Sentences.Say("room.sound-midnight"));
    }

    private static bool IsNoName(string name) => string.IsNullOrWhiteSpace(name) || name.Length > LongestName || name.Any(char.IsControl);
}
