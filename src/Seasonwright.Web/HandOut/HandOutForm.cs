using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk.Seasons;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Calendars;
using Seasonwright.Documents.HandOut.Posters;
using Seasonwright.Wire;

namespace Seasonwright.Web.HandOut;

/// <summary>What the page asked for, as it stands in the address. A field that is missing or makes no sense has its default.</summary>
internal sealed class HandOutForm(IQueryCollection query)
{
    /// <summary>The edition's field for the season as it stands.</summary>
    public const string Draft = "draft";

    /// <summary>Stands in the form so that a box without a tick is told from a box that was not there.</summary>
    public const string Asked = "asked";

    /// <summary>The number of a published version; null for the season as it stands, and for what is no number: VersionAsync says no to those that are none.</summary>
    public int? Version => Text("edition") is { Length: > 0 } text && text != Draft ? Number(text) ?? 0 : null;

    public bool KeyMatches => Ticked("key");

    /// <summary>The files by the last part of their address.</summary>
    /// <param name="today">From which the weeks ahead are counted.</param>
    /// <returns>Null where there is no such file.</returns>
    public async Task<HandOutFile?> MakeAsync(string file, HandingOut handing, DateOnly today, CancellationToken cancel)
    {
        var shared = handing.Season;
        return file switch
        {
            "poster.pdf" => HandOuts.Poster(shared, Poster(shared)),
            "poster.svg" => HandOuts.PosterDrawing(shared, Poster(shared)),
            "head-coach.pdf" => HandOuts.HeadCoachPaper(shared, today, Sheet("sheet")),
            "head-coach.html" => HandOuts.HeadCoachPage(shared, today),
            "week.pdf" => Week(shared.Season, today) is { } week ? HandOuts.WeekSheet(shared, week, Sheet("week-sheet")) : null,
            "calendar.ics" => HandOuts.Calendar(shared, Calendar(shared.Season), await handing.RevisionsAsync(cancel)),
            "workbook.xlsx" => HandOuts.Workbook(shared, Ticked("notes", otherwise: true)),
            "season.json" => new HandOutFile(HandOutFile.NameOf(shared, "season.json"), HandOutFile.SeasonFile,
                System.Text.Encoding.UTF8.GetBytes(SeasonFile.Write(shared.Season, shared.Setup, shared.Edition))),
            _ => null,
        };
    }

    /// <summary>The week of a form, else the one that holds the day, else the nearest end of the season.</summary>
    public SeasonWeek? Week(Season season, DateOnly today) =>
        season.Weeks.FirstOrDefault(week => week.Number == Number(Text("week"))) ?? season.WeekOf(today)
        ?? (season.Days is { } days && today > days.Last ? season.Weeks.LastOrDefault() : season.Weeks.FirstOrDefault());

    /// <summary>What a file names that its edition does not have: "group" or "week"; null where all is there. The page offers what the draft has.</summary>
    public string? Missing(string file, Season season) => file switch
    {
        "calendar.ics" when Text("group").Length > 0 && GroupOf(season) is null => "group",
        "week.pdf" when Text("week").Length > 0 && season.Weeks.All(week => week.Number != Number(Text("week"))) => "week",
        _ => null,
    };

    private GroupLine? GroupOf(Season season) => season.Groups.FirstOrDefault(known => known.Id.Text == Text("group"));

    private PaperSize Sheet(string field) => PaperSize.Find(Text(field)) is { } size && size == PaperSize.Letter ? size : PaperSize.A4;

    private PosterChoices Poster(SharedSeason shared)
    {
        var choices = new PosterChoices(PaperSize.Find(Text("paper")) ?? PaperSize.A3, Ticked("grey") ? Scheme.Grey : Scheme.Light);
        var wanted = query["track"].ToHashSet(StringComparer.Ordinal);
        return query.ContainsKey(Asked) ? choices with { Hidden = PosterTracks.Of(shared).Select(track => track.Id).Where(id => !wanted.Contains(id)).ToValueList() } : choices;
    }

    private CalendarChoices Calendar(Season season)
    {
        var group = GroupOf(season)?.Name;
        var kinds = query["kind"].ToHashSet(StringComparer.Ordinal);
        return query.ContainsKey(Asked)
            ? new CalendarChoices(kinds.Contains("matches"), kinds.Contains("events"), kinds.Contains("tests"), kinds.Contains("practices"), group, Sessions: kinds.Contains("sessions"))
            : new CalendarChoices(Group: group);
    }

    private string Text(string field) => query[field].ToString();

    private bool Ticked(string field, bool otherwise = false) => query.ContainsKey(Asked) ? query.ContainsKey(field) : otherwise || query.ContainsKey(field);

    private static int? Number(string text) =>
        int.TryParse(text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var number) ? number : null;
}
