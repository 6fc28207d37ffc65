using Seasonwright.Core.Calendar;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>
/// A new season from the last one: the plan moves by whole weeks until the week of the last season's first competition match
/// is the week of the new one's. What recurs comes along, what happened once or follows from the matches stays behind:
/// <list type="bullet">
/// <item>Phases, blocks, load, emphasis, practices, workouts, groups, tracks with their cells, staff: as they are. Test days, home programmes and cells by day shift.</item>
/// <item>Holidays, exams, camps and national-team windows: shifted and provisional, for their dates must be checked, and without
/// place, part of the day, nights, journey and note, which were that year's. Those their list no longer holds stay behind.</item>
/// <item>Journeys, tournaments, closed rooms and other events: behind. So are matches, sessions, notes, locks, ready marks, versions and accepted findings.</item>
/// <item>Week kinds that count matches (competition, congested): behind. All other kinds come along.</item>
/// <item>What is asked of a proposal: without what was said of single matches and of how the squad came.</item>
/// <item>Goals: with another day, and without where the squad stood, which nobody has measured yet.</item>
/// </list>
/// Common practice, no source.
/// </summary>
public static class NextSeason
{
    /// <summary>The first official match with a day, or null when the season has none.</summary>
    public static DateOnly? FirstCompetitionMatch(Season season) => season.Matches.Where(match => match.IsOfficial && match.IsOnOneDay).Select(match => match.Day).FirstOrDefault();

    /// <param name="firstCompetitionMatch">The day of the new season's first official match.</param>
    /// <param name="title">What the new season is called, or null.</param>
    /// <param name="facts">The new season's facts, for <see cref="AdoptSeason"/>; weeks keep their ids.</param>
    /// <returns>False when the last season has no official match to align on, or the day is no possible one (see <see cref="Frame.PossibleDays"/>).</returns>
    public static bool TryFrom(Season last, DateOnly firstCompetitionMatch, string? title, out FactSet facts)
    {
        facts = FactSet.Empty;
        if (FirstCompetitionMatch(last) is not { } aligned || !Frame.PossibleDays.Contains(firstCompetitionMatch)) return false;
        var start = last.Frame.WeekStart;
        var shift = WeekGrid.StartOfWeek(firstCompetitionMatch, start).DayNumber - WeekGrid.StartOfWeek(aligned, start).DayNumber;
        facts = last.Facts.Keys.Where(key => ComesAlong(last, key)).Aggregate(facts, (sum, key) => sum.With(key, last.Facts[key]));
        facts = facts
            .With(SeasonFacets.Frame.Of(default), last.Frame with { FirstDay = last.Frame.FirstDay.AddDays(shift) })
            .With(SeasonFacets.Team.Of(default), last.Team with { Title = title });
        // They keep their list, which has not said anything of the new year yet.
        foreach (var (id, item) in facts.All(SeasonFacets.Event))
            facts = facts.With(SeasonFacets.Event.Of(id), new Event(id, item.Kind, item.Title, item.Days.Shift(shift), For: item.For, Training: item.Training, Provisional: true, Source: item.AsListed().Source));
        foreach (var (id, test) in facts.All(SeasonFacets.TestDay))
            facts = facts.With(SeasonFacets.TestDay.Of(id), test with { Day = test.Day.AddDays(shift), Source = test.AsListed().Source });
        foreach (var (id, home) in facts.All(SeasonFacets.Home))
            facts = facts.With(SeasonFacets.Home.Of(id), home with { FirstDay = home.FirstDay.AddDays(shift) });
        foreach (var (id, goal) in facts.All(SeasonFacets.Goal))
            facts = facts.With(SeasonFacets.Goal.Of(id), goal with { From = null, By = goal.By?.AddDays(shift) });
        if (last.Facts.Find(SeasonFacets.Brief, default) is { } brief) facts = facts.With(SeasonFacets.Brief.Of(default), brief with { Tapers = null, Start = null });
        // All day cells go before any comes back, for a shifted day may be another cell's old one.
        var dayCells = facts.All(SeasonFacets.TrackCell).Where(cell => cell.Subject.Second.Day is not null).ToList();
        facts = dayCells.Aggregate(facts, (sum, cell) => sum.With(SeasonFacets.TrackCell.Of(cell.Subject), null));
        foreach (var (subject, value) in dayCells)
            facts = facts.With(SeasonFacets.TrackCell.Of(new(subject.First, CellPlace.Of(subject.Second.Day!.Value.AddDays(shift)))), value);
        return true;
    }

    /// <summary>Everything a season holds but its dates and its name, in the same order always: what of it comes along, then what stays behind.</summary>
    public static IReadOnlyList<SeasonShare> Shares(Season last) =>
    [
        .. from family in SeasonFacets.All.Select((facet, place) => (facet.Name, Place: place))
           where family.Name != SeasonFacets.Frame.Name && family.Name != SeasonFacets.Team.Name
           from key in last.Facts.Keys
           where key.Facet == family.Name
           group last.Facts[key]! by (ComesAlong: ComesAlong(last, key), family.Place, family.Name) into share
           orderby share.Key.ComesAlong descending, share.Key.Place
           select new SeasonShare(share.Key.Name, share.Key.ComesAlong, share.Count(), Sentences.Say(
               $"{(share.Key.ComesAlong ? "comes" : "stays")}.{share.Key.Name}", share.Count(),
               string.Join("; ", share.OfType<Event>().OrderBy(item => item.Days).Select(item => item.Title).Distinct(StringComparer.Ordinal)))),
    ];

    private static bool ComesAlong(Season last, Key key) => last.Facts[key] switch
    {
        Event item => item.Kind is EventKind.Holiday or EventKind.Exams or EventKind.Camp or EventKind.NationalTeamWindow && item.Source is not { Vanished: true },
        WeekKind kind => kind is not (WeekKind.Competition or WeekKind.Congested),
        _ => !LeftBehind.Contains(key.Facet),
    };

    private static readonly HashSet<string> LeftBehind = new(StringComparer.Ordinal)
    {
        SeasonFacets.Match.Name, SeasonFacets.Session.Name, SeasonFacets.Note.Name, SeasonFacets.WeekNote.Name, SeasonFacets.PracticeWish.Name, SeasonFacets.WeekLock.Name,
        SeasonFacets.WeekReady.Name, SeasonFacets.Publication.Name, SeasonFacets.Accepted.Name,
    };
}

/// <summary>One family of a season's facts as far as it goes one way.</summary>
/// <param name="Facet">The family's name, see <see cref="SeasonFacets"/>.</param>
/// <param name="ComesAlong">Into the next season; otherwise it stays behind.</param>
/// <param name="Count">How many of it, 1 or more.</param>
/// <param name="Words">The family and the count in a coach's words; events by their titles.</param>
public sealed record SeasonShare(string Facet, bool ComesAlong, int Count, string Words);
