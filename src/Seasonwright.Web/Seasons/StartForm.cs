using System.Collections.Immutable;
using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk;

namespace Seasonwright.Web.Seasons;

/// <summary>The question "when does it start?" as typed.</summary>
/// <param name="Team">An existing team's id; "" for a new one.</param>
/// <param name="Name">Of a new team.</param>
/// <param name="Title">"" for the years it spans.</param>
/// <param name="Last">The last day; where it is given it decides, else <paramref name="Weeks"/> does.</param>
internal sealed record StartForm(string Team, string Name, string Title, string First, string Weeks, string Last, string WeekStart)
{
    private const int UsualWeeks = 52;

    /// <summary>What is offered before anything is typed: a year from this week on.</summary>
    public static StartForm Offered(string team, DateOnly today, DayOfWeek weekStart) => new(
        team, "", "", WeekGrid.StartOfWeek(today, weekStart).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), $"{UsualWeeks}", "", weekStart.ToString());

    public static StartForm Read(Posted form) =>
        new(form["team"], form["name"], form["title"], form["first"], form["weeks"], form["last"], form["weekStart"]);

    /// <summary>Takes what is offered wherever something is missing or cannot be.</summary>
    public StartForm Mended(StartForm offered)
    {
        var wrong = Problems(new HashSet<string>(StringComparer.Ordinal) { Team });
        return new(Team,
            wrong.ContainsKey("name") ? Words.Say("new.team-unnamed") : Name,
            wrong.ContainsKey("title") ? "" : Title,
            wrong.ContainsKey("first") ? offered.First : First,
            wrong.ContainsKey("weeks") ? offered.Weeks : Weeks,
            wrong.ContainsKey("last") ? "" : Last,
            wrong.ContainsKey("weekStart") ? offered.WeekStart : WeekStart);
    }

    /// <summary>What is wrong, by field.</summary>
    /// <param name="teams">Ids of the teams there are.</param>
    public ImmutableSortedDictionary<string, string> Problems(IReadOnlySet<string> teams)
    {
        var wrong = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        if (Team.Length > 0 && !teams.Contains(Team)) wrong["team"] = Words.Say("new.team-gone");
        if (Team.Length == 0 && Name.Length == 0) wrong["name"] = Words.Say("new.name-missing");
        if (Name.Length > LongestName) wrong["name"] = Words.Say("new.long", Name.Length, LongestName);
        if (Title.Length > LongestName) wrong["title"] = Words.Say("new.long", Title.Length, LongestName);
        if (WrongDay(First) is { } day) wrong["first"] = day;
        if (!Enum.TryParse<DayOfWeek>(WeekStart, out var weekStart) || !Enum.IsDefined(weekStart)) wrong["weekStart"] = Words.Say("new.week-start-unread");
        if (Last.Length == 0)
        {
            if (WeeksTyped is not (>= 1 and <= Frame.MostWeeks)) wrong["weeks"] = Words.Say("new.weeks-wrong", Frame.MostWeeks);
        }
        else if (DayOf(Last) is not { } last) wrong["last"] = Words.Say("new.day-unread", Last);
        else if (!wrong.ContainsKey("first") && !wrong.ContainsKey("weekStart"))
        {
            if (last < DayOf(First)) wrong["last"] = Words.Say("new.last-early");
            else if (WeeksUntil(last) > Frame.MostWeeks) wrong["last"] = Words.Say("new.last-late", WeeksUntil(last), Frame.MostWeeks);
        }
        return wrong.ToImmutable();
    }

    /// <summary>The weeks; null while something about them is wrong.</summary>
    public WeekGrid? Grid
    {
        get
        {
            var wrong = Problems(new HashSet<string>(StringComparer.Ordinal) { Team });
            return wrong.Keys.Any(name => name is "first" or "weeks" or "last" or "weekStart") ? null
                : new WeekGrid(DayOf(First)!.Value, Start, DayOf(Last) is { } last ? WeeksUntil(last) : WeeksTyped!.Value);
        }
    }

    /// <summary>The edit that starts the season.</summary>
    /// <param name="team">The card of an existing team, whose name and crest stay.</param>
    public StartSeason Edit(WeekGrid grid, TeamCard? team) => new(grid.FirstDay, grid.WeekStart,
        Enumerable.Range(0, grid.Count).Select(_ => new WeekId(FreshId.Text())).ToValueList(),
        (team ?? new TeamCard(Name)) with { Title = Title.Length > 0 ? Title : SeasonTitle.Of(grid.Span) });

    public const int LongestName = 120;

    /// <summary>The day in a form's own way of writing it.</summary>
    public static DateOnly? DayOf(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    /// <summary>Why this is no day a season can start on; null when it is one.</summary>
    public static string? WrongDay(string text) => DayOf(text) is not { } day ? Words.Say(text.Length == 0 ? "new.day-missing" : "new.day-unread", text)
        : Frame.PossibleDays.Contains(day) ? null
        : Words.Say("new.day-impossible", text, Frame.PossibleDays.First.Year, Frame.PossibleDays.Last.Year);

    private DayOfWeek Start => Enum.Parse<DayOfWeek>(WeekStart);

    private int? WeeksTyped => int.TryParse(Weeks, NumberStyles.None, CultureInfo.InvariantCulture, out var weeks) ? weeks : null;

    private int WeeksUntil(DateOnly last) => new WeekGrid(DayOf(First)!.Value, Start, 1).NumberOf(last);
}
