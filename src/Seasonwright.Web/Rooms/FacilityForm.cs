using System.Globalization;
using System.Text.RegularExpressions;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Rooms;

/// <summary>A room as it is typed, and what is wrong with each field.</summary>
internal sealed partial class FacilityForm
{
    private readonly Dictionary<string, string> wrong = new(StringComparer.Ordinal);

    public string Name { get; private set; } = "";

    public string Places { get; private set; } = "";

    public string Coaches { get; private set; } = "";

    public Dictionary<DayOfWeek, string> Hours { get; } = RoomSay.Week.ToDictionary(day => day, _ => "");

    public string Closed { get; private set; } = "";

    /// <summary>"" for each team's own, "keep" for what the room says already, or the id of the team that it is taken over from.</summary>
    public string Gym { get; private set; } = "";

    public bool IsWrong => wrong.Count > 0;

    public string? Wrong(string field) => wrong.GetValueOrDefault(field);

    public static FacilityForm Of(Facility facility)
    {
        var form = new FacilityForm
        {
            Name = facility.Room.Name,
            Places = facility.Room.Places.ToString(CultureInfo.InvariantCulture),
            Coaches = facility.Room.Coaches.ToString(CultureInfo.InvariantCulture),
            Closed = string.Join("\n", (facility.Room.Closed ?? []).Select(days => days.First == days.Last ? days.First.Iso() : $"{days.First.Iso()} to {days.Last.Iso()}")),
            Gym = facility.Gym is null ? "" : "keep",
        };
        foreach (var day in RoomSay.Week) form.Hours[day] = RoomSay.HoursOf(facility.Room, day);
        return form;
    }

    public static FacilityForm Of(Posted posted)
    {
        var form = new FacilityForm { Name = posted["name"], Places = posted["places"], Coaches = posted["coaches"], Closed = posted["closed"], Gym = posted["gym"] };
        foreach (var day in RoomSay.Week) form.Hours[day] = posted[Field(day)];
        return form;
    }

    public static string Field(DayOfWeek day) => $"open-{(int)day}";

    /// <summary>The room that was typed; null after saying beside which field what is wrong.</summary>
    /// <param name="gymOf">What there is to lift with by the word of the choice.</param>
    public Facility? Read(RoomId id, Func<string, Core.Setups.Gym?> gymOf)
    {
        var room = new Room(id, Name, Number("places", Places), Number("coaches", Coaches), [.. RoomSay.Week.SelectMany(HoursOf)], ClosedDays());
        var gym = Gym.Length == 0 ? null : gymOf(Gym);
        if (Name.Length == 0) wrong["name"] = Words.Say("room.wrong-name");
        if (Hours.Values.All(string.IsNullOrEmpty)) wrong[Field(DayOfWeek.Monday)] = Words.Say("room.wrong-open");
        if (Gym.Length > 0 && gym is null) wrong["gym"] = Words.Say("room.wrong-gym");
        return IsWrong ? null : new(room, gym);
    }

    /// <summary>What was refused is told beside its field.</summary>
    /// <returns>What belongs to no field.</returns>
    public IReadOnlyList<string> Refuse(IEnumerable<Refusal> reasons)
    {
        List<string> rest = [];
        foreach (var reason in reasons)
        {
            var field = reason.Subject.Split('/', 2)[^1].Split('.', 2) switch
            {
                [_, "name"] => "name",
                [_, "places"] => "places",
                [_, "coaches"] => "coaches",
                [_, "closed"] => "closed",
                [_, "open"] => Field(DayOfWeek.Monday),
                [_, var open] when open.StartsWith("open.", StringComparison.Ordinal) && Enum.TryParse<DayOfWeek>(open[5..], out var day) => Field(day),
                _ => null,
            };
            if (field is null) rest.Add(reason.Sentence);
            else wrong.TryAdd(field, reason.Sentence);
        }
        return rest;
    }

    private int Number(string field, string text)
    {
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number)) return number;
        wrong[field] = text.Length == 0 ? Words.Say("room.wrong-empty") : Words.Say("room.wrong-number", text);
        return 0;
    }

    private IEnumerable<RoomHours> HoursOf(DayOfWeek day)
    {
        List<RoomHours> hours = [];
        foreach (var part in Hours[day].Split([',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (HoursForm().Match(part) is { Success: true } match && Time(match, "from") is { } from && Time(match, "to") is { } to) hours.Add(new(day, from, to));
            else wrong[Field(day)] = Words.Say("room.wrong-hours", part);
        }
        return hours;

        static TimeOnly? Time(System.Text.RegularExpressions.Match match, string end) =>
            int.Parse(match.Groups[$"{end}h"].Value, CultureInfo.InvariantCulture) is var hour and < 24 && (match.Groups[$"{end}m"] is { Success: true } typed ? int.Parse(typed.Value, CultureInfo.InvariantCulture) : 0) is var minute and < 60 ? new TimeOnly(hour, minute) : null;
    }

    private ValueList<DaySpan>? ClosedDays()
    {
        List<DaySpan> closed = [];
        foreach (var line in Closed.Split(['\n', ';', ','], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var ends = SpanForm().Split(line);
            if (ends.Length is 1 or 2 && Day(ends[0]) is { } first && Day(ends[^1]) is { } last)
            {
                if (last < first) wrong["closed"] = Words.Say("room.wrong-backward", line);
                else closed.Add(new(first, last));
            }
            else wrong["closed"] = Words.Say("room.wrong-day", line);
        }
        return closed.Count == 0 ? null : closed.ToValueList();

        static DateOnly? Day(string text) => DateOnly.TryParseExact(text.Trim(), ["yyyy-MM-dd", "d MMM yyyy", "d MMMM yyyy", "d.M.yyyy"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;
    }

    [GeneratedRegex(@"^(?<fromh>\d{1,2})([:.](?<fromm>\d{2}))? ?(-|–|to) ?(?<toh>\d{1,2})([:.](?<tom>\d{2}))?$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex HoursForm();

    [GeneratedRegex(@" +(?:to|-|–) +|(?<=\d)–(?=\d)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex SpanForm();
}
