using System.Globalization;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents;

namespace Seasonwright.Web.Rooms;

/// <summary>How the pages tell rooms.</summary>
internal static class RoomSay
{
    /// <summary>"40 places, 2 coaches".</summary>
    public static string Holds(Room room) => Words.Say(room.Coaches == 1 ? "room.holds-one" : "room.holds", room.Places, room.Coaches);

    /// <summary>"Mon-Fri 07:00-21:00; Sat 09:00-13:00": days one after the other with the same hours together.</summary>
    public static string Hours(Room room)
    {
        List<(DayOfWeek First, DayOfWeek Last, string Hours)> runs = [];
        foreach (var day in Week)
        {
            var hours = HoursOf(room, day);
            if (hours.Length == 0) continue;
            if (runs.Count > 0 && runs[^1].Hours == hours && Array.IndexOf(Week, runs[^1].Last) == Array.IndexOf(Week, day) - 1) runs[^1] = runs[^1] with { Last = day };
            else runs.Add((day, day, hours));
        }
        return string.Join("; ", runs.Select(run => (run.First == run.Last ? Short(run.First) : $"{Short(run.First)}-{Short(run.Last)}") + " " + run.Hours));
    }

    /// <summary>"16:00-20:00, 20:30-22:00", as it would be typed.</summary>
    public static string HoursOf(Room room, DayOfWeek day) => string.Join(", ", room.Open.Where(hours => hours.Day == day).OrderBy(hours => hours.From).Select(hours => $"{hours.From.Iso()}-{hours.To.Iso()}"));

    /// <summary>The days of a week as it is read.</summary>
    public static DayOfWeek[] Week { get; } = [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday, DayOfWeek.Saturday, DayOfWeek.Sunday];

    public static string Long(DayOfWeek day) => CultureInfo.InvariantCulture.DateTimeFormat.GetDayName(day);

    private static string Short(DayOfWeek day) => CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedDayName(day);

    /// <summary>A few letters for each team, where its name has no room: "HVJ". No two have the same.</summary>
    public static IReadOnlyDictionary<TeamId, string> Letters(IEnumerable<RoomTeam> teams)
    {
        Dictionary<TeamId, string> letters = [];
        foreach (var team in teams)
        {
            var first = string.Concat(team.Name.Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries).Take(4).Select(word => char.ToUpperInvariant(word[0])));
            letters[team.Id] = Enumerable.Range(1, letters.Count + 1).Select(number => number == 1 ? first : FormattableString.Invariant($"{first}{number}")).First(free => !letters.ContainsValue(free));
        }
        return letters;
    }

    /// <summary>"18 athletes"; "athletes not known".</summary>
    public static string Athletes(RoomBooking booking) => booking.Athletes is { } known ? Words.Say(known == 1 ? "room.athlete" : "room.athletes", known) : Words.Say("room.athletes-unknown");

    /// <summary>"Thu 21 17:30-18:30".</summary>
    public static string When(RoomAsk ask, RoomPlace at) => Clock.Words(at.Day, Clock.Minute(at.Start), Math.Min(ask.End(at.Start), Clock.Day));
}
